package leadlight.summary.day;

import leadlight.model.remark.Doubt;

/**
 * How often something kept joints from being judged.
 *
 * @param doubt what, as it was at one of the joints; the others differ in numbers and pins alone
 * @param joints how many joints
 */
public record Reason(Doubt doubt, int joints) {}

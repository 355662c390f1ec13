/**
 * From measures to findings and verdicts by class.
 *
 * <p>In: {@code Joint}s and the limits in {@code models/acceptance}. Out: {@code GradedJoint}s. May
 * use: {@code model}, {@code data}, Jackson annotations, commons-statistics.
 */
package leadlight.grade;

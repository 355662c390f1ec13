package leadlight.grade;

/**
 * Placeholder until the limits are read from data: a name without limits.
 *
 * @param id name of the set
 */
public record AcceptanceSet(String id) {}

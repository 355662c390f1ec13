package leadlight.motion;

/**
 * A pick in the picture, in grid pixels.
 *
 * @param cover which pixels it hides
 * @param tipX column of its tip
 * @param tipY row of its tip
 * @param lean columns that its shaft moves away from the tip a row further out: it leans away from
 *     the lead that it pushes
 * @param votes how much speaks for it, rows
 */
record Pick(boolean[] cover, double tipX, double tipY, double lean, double votes) {}

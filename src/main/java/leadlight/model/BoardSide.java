package leadlight.model;

/** Sides of a board, as an anchor leg sees them. */
public enum BoardSide {
  /** Where the part sits: the solder's destination. */
  COMPONENT("component"),
  /** Where the legs come out: the solder's source. */
  SOLDER("solder");

  private final String id;

  BoardSide(String id) {
    this.id = id;
  }

  /** The name in files and commands. */
  public String id() {
    return id;
  }
}

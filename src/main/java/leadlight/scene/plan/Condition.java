package leadlight.scene.plan;

/** What became of a joint. */
public enum Condition {
  WETTED("wetted"),
  OPEN("open"),
  STARVED("insufficient"),
  EXCESS("excess"),
  MISSING("missing-lead");

  private final String id;

  Condition(String id) {
    this.id = id;
  }

  /** The name in truth files. */
  public String id() {
    return id;
  }
}

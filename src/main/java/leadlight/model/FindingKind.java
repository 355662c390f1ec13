package leadlight.model;

/** What can be seen wrong with a joint. */
public enum FindingKind {
  BRIDGE("bridge"),
  OPEN("open"),
  INSUFFICIENT("insufficient"),
  EXCESS("excess"),
  MISSING_LEAD("missing-lead"),
  SIDE_OVERHANG("side-overhang"),
  TOE_OVERHANG("toe-overhang"),
  SKEWED_LEAD("skewed-lead"),
  VOID("void"),
  SOLDER_BALL("solder-ball"),
  RESIDUE("residue");

  private final String id;

  FindingKind(String id) {
    this.id = id;
  }

  /** The name in files and reports. */
  public String id() {
    return id;
  }
}

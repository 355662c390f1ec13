package leadlight.model;

import java.util.Set;

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

  /** What a photo shows that is fit for coarse faults only: whole leads and metal between them. */
  private static final Set<FindingKind> COARSE = Set.of(BRIDGE, MISSING_LEAD, SIDE_OVERHANG);

  private final String id;

  FindingKind(String id) {
    this.id = id;
  }

  /** The name in files and reports. */
  public String id() {
    return id;
  }

  /** Whether a photo that is too coarse for fillets shows it still. */
  public boolean coarse() {
    return COARSE.contains(this);
  }
}

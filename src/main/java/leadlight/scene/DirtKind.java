package leadlight.scene;

/** What lies about. */
public enum DirtKind {
  RESIDUE,
  FIBRE,
  BALL,
  SCORCH
}

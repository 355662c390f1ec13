package leadlight.scene;

/** What lies about. */
public enum DirtKind {
  RESIDUE,
  POOL,
  FIBRE,
  BALL,
  SCORCH
}

package leadlight.scene.plan;

/** What lies about. */
public enum DirtKind {
  RESIDUE,
  POOL,
  FIBRE,
  BALL,
  SCORCH
}

package leadlight.row;

record RowTuning(
    double apartRad,
    double peakShare,
    int mostDirections,
    double leastComb,
    int mostCandidates,
    int mostFits,
    double[] bodyWeights,
    ToeTuning toe,
    AcceptanceTuning acceptance) {
  static RowTuning standard() {
    return new RowTuning(
        0.10, 0.3, 3, 0.45, 8, 3,
        new double[] {-0.026, -0.01, 2.347, 1.852, -12.4, -1.641, -5.098, -1.911}, new ToeTuning(0.045,0.70,0.15,0.35,0.08,0.5,0.4,0.2,1.2,9,0.07,0.15,0.42,1.45,0.2,0.016, 0.04, 0.15), new AcceptanceTuning(0.70, 0.45, 0.32, 0.65, 9.5, 0.7, 0.08, 1.5));
  }
}

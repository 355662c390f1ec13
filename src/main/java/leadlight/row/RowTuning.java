package leadlight.row;

record RowTuning(
    double apartRad,
    double peakShare,
    int mostDirections,
    double leastComb,
    int mostCandidates,
    int mostFits,
    double leastScore,
    double[] bodyWeights) {
  static RowTuning standard() {
    return new RowTuning(
        0.10,
        0.3,
        3,
        0.3,
        8,
        4,
        0.4,
        new double[] {-0.026, -0.01, 2.347, 1.852, -12.4, -1.641, -5.098, -1.911});
  }
}

package leadlight.statistics;

/** A share with its 95 % interval, however that was made. */
public interface Rated {

  /** How many. */
  int count();

  /** Out of how many; 0 means that there is nothing to rate. */
  int of();

  /** The share; NaN if there is nothing to rate. */
  double share();

  /** Lower end of the interval. */
  double lower();

  /** Upper end of the interval. */
  double upper();
}

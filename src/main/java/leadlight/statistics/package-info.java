/**
 * Rates and their intervals, as every other package prints them.
 *
 * <p>In: counts, by cluster where things that were counted lie together. Out: shares with 95 %
 * intervals. May use: {@code data} (one file of constants), Commons Numbers.
 */
package leadlight.statistics;

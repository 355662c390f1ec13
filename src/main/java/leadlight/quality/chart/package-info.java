/**
 * Charts beyond Shewhart's for counts: rare events, small shifts, more spread than chance.
 *
 * <p>In: groups or dated joints. Out: charts with a stated design, pages. May use what {@code
 * quality} may.
 */
package leadlight.quality.chart;

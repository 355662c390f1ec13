/**
 * How right Leadlight is: truth files, counting by stated rules, intervals, tables.
 *
 * <p>In: folders of photos with truth ({@code *.truth.json}) or with annotated rows ({@code
 * *.row.json}), and what Leadlight said of them. Out: counts, rates with intervals, a table, a
 * machine-readable summary. May use: {@code model}, {@code vision} (to fit a map), Jackson,
 * FastCSV, Commons Statistics. Knows no stage: it counts what it is given.
 */
package leadlight.trial;

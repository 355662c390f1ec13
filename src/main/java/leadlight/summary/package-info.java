/**
 * What a run comes to: jobs worst first, findings, pins that fail, photos to retake, defects per
 * million, and what changed from one stage of a board to the next.
 *
 * <p>In: a run of the record. Out: values for a page, tables. May use: {@code model}, {@code data},
 * {@code record}, {@code text}, Commons Statistics, FastCSV.
 */
package leadlight.summary;

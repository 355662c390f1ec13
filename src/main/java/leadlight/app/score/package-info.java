/**
 * Photos scored: one by one, into the record, joined, with their anchor legs, nudged; told as they
 * are done.
 *
 * <p>In: photos and settings. Out: {@code Told}, result files. May use: {@code app.output}, {@code
 * batch}, {@code batch.list}, {@code connector}, {@code data}, {@code enrol}, {@code grade.limits},
 * {@code leg}, {@code leg.find}, {@code life}, {@code model}, {@code model.remark}, {@code
 * model.result}, {@code model.row}, {@code motion}, {@code photo}, {@code pipeline}, {@code
 * record}, {@code record.said}, {@code record.scoring}, {@code report}, {@code report.picture},
 * {@code together}, {@code vision}.
 */
package leadlight.app.score;

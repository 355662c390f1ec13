/**
 * Photos with truth scored and counted, alone, in sets and by bench; joints cut out of them to
 * train on.
 *
 * <p>In: photos with truth, the record. Out: outcomes, tables, close-ups. May use: {@code
 * app.output}, {@code connector}, {@code data}, {@code enrol}, {@code enrol.learn}, {@code
 * grade.limits}, {@code model}, {@code model.joint}, {@code model.picture}, {@code model.remark},
 * {@code model.result}, {@code model.row}, {@code motion}, {@code photo}, {@code pipeline}, {@code
 * quality.bench}, {@code reader}, {@code record}, {@code record.said}, {@code record.scoring},
 * {@code report.strip}, {@code row}, {@code rowcheck}, {@code together}, {@code trial}, {@code
 * trial.list}, {@code trial.outcome}, {@code trial.sets}, {@code trial.truth}, {@code vision}.
 */
package leadlight.app.trial;

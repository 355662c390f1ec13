/**
 * {@code trial}: photos with truth scored and counted, alone and in sets.
 *
 * <p>In: folders of photos with truth. Out: tables, reports, slips. May use: {@code cli.bench},
 * {@code cli.option}, {@code cli.terminal}, {@code connector}, {@code data}, {@code enrol}, {@code
 * enrol.learn}, {@code grade.limits}, {@code model}, {@code model.joint}, {@code model.remark},
 * {@code model.result}, {@code model.row}, {@code motion}, {@code photo}, {@code pipeline}, {@code
 * quality.bench}, {@code record}, {@code record.said}, {@code record.scoring}, {@code
 * report.strip}, {@code row}, {@code together}, {@code trial}, {@code trial.list}, {@code
 * trial.outcome}, {@code trial.sets}, {@code trial.truth}, {@code vision}.
 */
package leadlight.cli.trial;

/**
 * {@code score}, {@code legs} and {@code nudge}: photos to results, one by one, together, or into
 * the record.
 *
 * <p>In: photos and options. Out: result files, lines, an exit status. May use: {@code app.output},
 * {@code app.record}, {@code app.score}, {@code cli.bench}, {@code cli.option}, {@code
 * cli.terminal}, {@code connector}, {@code data}, {@code enrol}, {@code grade.limits}, {@code leg},
 * {@code leg.find}, {@code life}, {@code model}, {@code model.result}, {@code page}, {@code
 * record}, {@code record.said}, {@code record.scoring}, {@code report}, {@code report.picture},
 * {@code report.words}, {@code text}, {@code together}, {@code vision}.
 */
package leadlight.cli.score;

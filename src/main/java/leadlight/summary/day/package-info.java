/**
 * What a run or a day comes to: jobs worst first, those that must not be handed back before all
 * others, findings, pins, retakes, defects per million, changes between stages.
 *
 * <p>In: a run of the record. Out: values, tables. May use: {@code data}, {@code model}, {@code
 * model.joint}, {@code model.remark}, {@code model.result}, {@code model.row}, {@code record},
 * {@code record.said}, {@code record.scoring}, {@code statistics}, {@code summary.board}, {@code
 * text}.
 */
package leadlight.summary.day;

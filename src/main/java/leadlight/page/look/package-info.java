/**
 * What every page looks like: style, script and policy, bar of value and limit, plot, strip of the
 * row.
 *
 * <p>In: values. Out: pieces of a page. May use: {@code page.words}, {@code model}, {@code
 * model.joint}, {@code model.picture}, {@code report.strip}, {@code text}, {@code vision}.
 */
package leadlight.page.look;

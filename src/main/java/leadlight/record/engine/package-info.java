/**
 * What differs between the engines that a record may lie on: where it is, its words of SQL, the
 * text of its numbers, its migrations.
 *
 * <p>In: what the user named, scripts of migrations, open connections. Out: places, scripts of the
 * other engine, rows as text that is the same on both. May use: {@code data}, {@code model}.
 */
package leadlight.record.engine;

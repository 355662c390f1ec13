/**
 * The job record: what was seen on which board, when, by which settings, and what people said to
 * it, in one SQLite file in a folder that the user owns, or in a PostgreSQL database that several
 * benches share. {@code docs/record.md} has the schema.
 *
 * <p>In: scored photos with their job. Out: the same as model values, by search; whether all is
 * still sound. May use: {@code model}, {@code data}, {@code text} (sentences beside the codes, for
 * readers of the tables), JDBC with JDBI, Flyway. No other package knows a database.
 */
package leadlight.record;

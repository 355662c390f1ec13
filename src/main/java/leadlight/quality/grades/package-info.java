/**
 * Grades: who called which item what, and how verdict words are read.
 *
 * <p>In: tables. Out: {@code Grades}. May use: {@code quality}, {@code model}.
 */
package leadlight.quality.grades;

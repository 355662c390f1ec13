package leadlight.quality.grades;

import java.util.Optional;

/**
 * What one grader said of one item, once.
 *
 * @param item what was graded, as "board 7 pin 3"
 * @param grader who or what graded
 * @param trial number of the repeat, from 1
 * @param verdict category, as "defect"
 * @param finding what was found, if said
 */
public record Grade(
    String item, String grader, int trial, String verdict, Optional<String> finding) {}

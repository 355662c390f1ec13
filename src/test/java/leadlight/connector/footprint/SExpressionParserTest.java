package leadlight.connector.footprint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SExpressionParserTest {

  @Test
  void stringsMayHoldEscapesBracketsAndLineFeeds() {
    SExpression.Branch root = SExpressionParser.parse("(a \"b \\\"c\\\" (d) \\\\ \n e\" f)");

    assertThat(root.words()).containsExactly("b \"c\" (d) \\ \n e", "f");
  }

  @Test
  void commentLinesAreSkippedButAHashInAWordIsNot() {
    SExpression.Branch root = SExpressionParser.parse("# one\n(a\n  # two )\n  b#c)\n# three");

    assertThat(root.words()).containsExactly("b#c");
  }

  @Test
  void placesCountLinesAndColumnsFromOne() {
    SExpression.Branch root = SExpressionParser.parse("(a\n  (b 1))");

    assertThat(root.branch("b").orElseThrow().place()).isEqualTo(new SExpression.Place(2, 3));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          (a (b)        | line 1 column 1: this bracket is never closed
          (a "b         | line 1 column 4: this string is never closed
          (a) (b)       | line 1 column 5: something follows the end
          a             | line 1 column 1: "(" is needed here
          )             | line 1 column 1: "(" is needed here
          ''            | line 1 column 1: the file is empty
          """)
  void faultsSayLineAndColumn(String text, String message) {
    assertThatThrownBy(() -> SExpressionParser.parse(text))
        .isInstanceOf(FootprintError.class)
        .hasMessageStartingWith(message);
  }

  @Test
  void bracketsWithoutEndAreRefusedBeforeTheStackIs() {
    assertThatThrownBy(() -> SExpressionParser.parse("(".repeat(1_000_000)))
        .isInstanceOf(FootprintError.class)
        .hasMessageContaining("nest more than 200 deep");
  }

  @Test
  void aNumberThatIsNoneIsNamedWithItsPlace() {
    SExpression.Branch at = SExpressionParser.parse("(at 1 two)");

    assertThat(at.number(1)).isEqualTo(1);
    assertThatThrownBy(() -> at.number(2))
        .hasMessage("line 1 column 7: \"two\" is not a length or angle");
    assertThatThrownBy(() -> at.number(3)).hasMessageContaining("at lacks its value number 3");
    assertThatThrownBy(() -> SExpressionParser.parse("(at NaN)").number(1))
        .isInstanceOf(FootprintError.class);
  }
}

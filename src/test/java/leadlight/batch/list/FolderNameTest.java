package leadlight.batch.list;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FolderNameTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "..",
        ".",
        "../../etc",
        "/etc",
        "a/b",
        "a\\b",
        "C:",
        "con",
        "nul.txt",
        "a\nb",
        "a\u0000b",
        " a ",
        "a.",
        "\u202eabc",
        "=x|y?*\"<>"
      })
  void noNameLeadsOutOfItsFolder(String name) {
    Path root = Path.of("/out/run");

    Path place = root.resolve(FolderName.of(name)).normalize();

    assertThat(place.getParent()).isEqualTo(root);
    assertThat(place.getFileName().toString())
        .matches("[\\p{L}\\p{M}\\p{N} ._~-]+")
        .doesNotStartWith(".")
        .doesNotEndWith(".");
  }

  @Test
  void plainNamesOfAnyLanguageStay() {
    assertThat(FolderName.of("0412 Gauge-house.b_1")).isEqualTo("0412 Gauge-house.b_1");
    assertThat(FolderName.of("\u6c34\u4f4d\u8a08")).isEqualTo("\u6c34\u4f4d\u8a08");
  }

  @Test
  void namesThatHadToChangeStayApart() {
    assertThat(FolderName.of("a/b")).isNotEqualTo(FolderName.of("a:b"));
    String longOne = "\u6c34".repeat(250);
    assertThat(FolderName.of(longOne + "1")).isNotEqualTo(FolderName.of(longOne + "2"));
    assertThat(FolderName.of(longOne).getBytes(StandardCharsets.UTF_8).length).isLessThan(100);
  }
}

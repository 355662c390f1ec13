package leadlight.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import leadlight.text.LengthUnit;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CustomerSheetTest {

  private static final String SEAL = "57-" + "3f2a".repeat(16);

  @AfterAll
  static void release() {
    ScoredRow.closeAll();
  }

  private static CustomerSheet sheet(String language, Optional<String> signedBy) {
    CustomerSheet.Shot shot = new CustomerSheet.Shot(ScoredRow.SCORED, ScoredRow.frame());
    return new CustomerSheet(
        ScoredRow.context(language, LengthUnit.MM),
        request(ScoredRow.HOSTILE, "\u677f 7", signedBy),
        Optional.of(shot),
        shot);
  }

  /** A board that the record says little of. */
  static SheetRequest request(String job, String board, Optional<String> signedBy) {
    return new SheetRequest(
        job,
        board,
        Optional.of("RL-7"),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        java.util.List.of(),
        Optional.empty(),
        "",
        signedBy,
        SEAL,
        "2026-11-28");
  }

  private static String letters(String text) {
    return text.replaceAll("[^\\p{L}\\p{Nd}]", "");
  }

  private static String text(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertThat(document.getNumberOfPages()).isOne();
      return new PDFTextStripper().getText(document);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de"})
  void pageAndPdfCarryTheSealOfTheRecord(String language) throws IOException {
    CustomerSheet sheet = sheet(language, Optional.empty());
    assertThat(new String(sheet.html(), StandardCharsets.UTF_8)).contains(SEAL + ".");
    assertThat(letters(text(sheet.pdf()))).contains(letters(SEAL));
  }

  @Test
  void thePdfSaysWhatThePageSays() throws IOException {
    CustomerSheet sheet = sheet("en", Optional.of("the bench"));
    String html = new String(sheet.html(), StandardCharsets.UTF_8);
    String page =
        html.substring(html.indexOf("</head>"))
            .replaceAll("<[^>]*>", " ")
            .replace("&lt;", "<")
            .replace("&gt;", ">")
            .replace("&#34;", "\"")
            .replace("&#39;", "'")
            .replace("&amp;", "&");
    assertThat(letters(text(sheet.pdf())))
        .as("letter by letter, but for a character that the typeface lacks")
        .isEqualTo(letters(page).replace("\u677f", ""));
  }

  @Test
  void theSameSheetGivesTheSameBytes() {
    assertThat(sheet("de", Optional.empty()).pdf()).isEqualTo(sheet("de", Optional.empty()).pdf());
  }

  @Test
  void nobodySignsBySilence() throws IOException {
    assertThat(text(sheet("en", Optional.empty()).pdf())).contains("Not signed");
  }

  @Test
  void whatNobodySawIsNotInspectedAndNobodyLookedBySilence() throws IOException {
    CustomerSheet.Shot mixed =
        new CustomerSheet.Shot(ScoredRow.withAllVerdicts(), ScoredRow.frame());
    CustomerSheet sheet =
        new CustomerSheet(
            ScoredRow.context("en", LengthUnit.MM),
            request("1", "2", Optional.empty()),
            Optional.empty(),
            mixed);
    assertThat(text(sheet.pdf()))
        .contains("not inspected")
        .doesNotContain("microscope", "All 19", "No fault was seen");
  }
}

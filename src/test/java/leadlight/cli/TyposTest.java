package leadlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Typical slips, and that one line says what was meant. */
class TyposTest {

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "scroe x.jpg | did you mean score?",
        "sccore x.jpg | did you mean score?",
        "recrod | did you mean record?",
        "bacth x | did you mean batch?",
        "benhc | did you mean bench?",
        "whatch x | did you mean watch?",
        "nugde a b | did you mean nudge?",
        "conector list | did you mean connector?",
        "record shwo 1 | did you mean show?",
        "record overule 1 1 | did you mean overrule?",
        "score x.jpg --leds 19 | did you mean --leads?",
        "score x.jpg --ptich 0.5 | did you mean --pitch?",
        "score x.jpg --conector usb-c-16 | did you mean --connector?",
        "score x.jpg --quite | did you mean --quiet?",
        "score x.jpg --clas 2 | did you mean --class?",
        "record --finding opn | did you mean open?",
        "score x.jpg --pitch half --leads 19 | is not a number",
        "score x.jpg --leads 19 --pitch 0.5 --stage finl --job 1 | did you mean final?",
        "score x.jpg --preset port | docs/bench.md",
        "man scroe | did you mean score?",
        "help scroe | did you mean score?",
        "scroe --help | did you mean score?",
        "help record baord | did you mean board?",
        "x.jpg | no command is called x.jpg",
        "--leads 19 score x.jpg | a command stands before its options",
        "score x.jpg \u2014leads 19 --pitch 0.5 | an option begins with two short ones: --leads",
        "score x.jpg --leads 0,5 --pitch 19 | --leads: '0,5' is not a whole number",
        "score x.jpg --leads 19 --pitch | a value is missing behind --pitch",
        "score x.jpg --leads 19 --pitch 0.5 --body left/right | 'left/right' is none of above",
        "record day 29.11.2026 | is not a day, as 2026-03-31",
        "record show one | NUMBER: 'one' is not a whole number",
        "nudge x.jpg | REST PUSHED... needs at least 2",
        "score x.jpg --json=perhaps | --json: takes no value",
        "trial --opinions x y | --opinions: say both, measures or reader",
        "record hand-back | JOB is missing",
        "record meter 1 6 short | name the other one with --other-pin",
        "connector | name a command of leadlight connector",
        "score sample-images --leads 19 --pitch 0.5 | is a folder; name a picture file",
        "score README.md --leads 19 --pitch 0.5 | is a text file"
      })
  void theLineSaysWhatWasMeant(String line, String said) {
    Run run = Run.of((Object[]) line.split(" "));
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).hasLineCount(1).contains(said);
  }

  @Test
  void aCommaAndAUnitAreUnderstood() {
    for (String pitch : new String[] {"0.5", "0,5", "0.5mm", "0,5 mm"}) {
      Run run =
          Run.of(
              "score",
              "sample-images/base-station-video-good.jpg",
              "--leads",
              19,
              "--pitch",
              pitch,
              "--out",
              folder,
              "--quiet");
      assertThat(run.status()).as(pitch).isZero();
      assertThat(run.out()).hasLineCount(1).contains("ACCEPTABLE");
    }
  }

  @Test
  void aJobOfAnotherNameIsNotTakenForItsBeginningAndIsSaidToBeNew() {
    Run.of("record", "note", "0412 weir", "--serial", "RL-7", "--record", folder);
    Run slip = Run.of("record", "note", "0421", "--serial", "RL-8", "--record", folder);
    assertThat(slip.out()).contains("0421, board 1").contains("a new job, nearest: 0412 weir");
    assertThat(Run.of("record", "note", "041", "--part", "p", "--record", folder).out())
        .contains("041, board 1");
    assertThat(Run.of("record", "note", "0412", "--part", "p", "--record", folder).out())
        .contains("0412 weir, board 1")
        .doesNotContain("new");
  }

  @Test
  void helpIsHelp() {
    assertThat(Run.of("help").out()).isEqualTo(Run.of("--help").out()).contains("bench", "score");
    assertThat(Run.of("help", "score").out()).isEqualTo(Run.of("score", "--help").out());
  }

  @Test
  void completionAndManualsKnowEveryCommand() {
    Run completion = Run.of("completion");
    Run man = Run.of("man", "record", "meter");
    assertThat(completion.out()).contains("leadlight", "--keep-photo", "hand-back", "overrule");
    assertThat(man.status()).isZero();
    assertThat(man.out()).startsWith(".TH LEADLIGHT-RECORD-METER 1").contains(".SH OPTIONS");
  }
}

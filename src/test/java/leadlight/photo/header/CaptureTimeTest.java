package leadlight.photo.header;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tags as Exif 2.32 (CIPA DC-008-2019), section 4.6.5 F, and as cameras really write them. */
class CaptureTimeTest {

  private static final String TIME = "2026:03:01 09:05:07";

  @ParameterizedTest
  @CsvSource(
      ignoreLeadingAndTrailingWhitespace = false,
      value = {
        "5,,2026-03-01T09:05:07.5",
        "05,,2026-03-01T09:05:07.05",
        "120  ,,2026-03-01T09:05:07.120",
        "   ,   :  ,2026-03-01T09:05:07",
        ",+00:00,2026-03-01T09:05:07+00:00",
        ",-03:30,2026-03-01T09:05:07-03:30",
        ",+99:00,2026-03-01T09:05:07",
        ",Z,2026-03-01T09:05:07"
      })
  void fractionAndOffsetAreGivenOnlyIfTheFileHasThem(String sub, String offset, String iso) {
    assertThat(CaptureTime.iso(TIME, sub == null ? "" : sub, offset == null ? "" : offset))
        .contains(iso);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "0000:00:00 00:00:00",
        "    :  :     :  :  ",
        "2026:02:30 10:00:00",
        "2026:03:01 25:00:00",
        "2026-03-01T09:05:07",
        "yesterday"
      })
  void anUnknownOrImpossibleTimeIsAbsent(String original) {
    assertThat(CaptureTime.iso(original, "12", "+01:00")).isEmpty();
  }

  @Test
  void whatFollowsTheNulIsIgnored() {
    assertThat(CaptureTime.iso(TIME + "\0junk", "7\0", "+01:00\0"))
        .contains("2026-03-01T09:05:07.7+01:00");
  }
}

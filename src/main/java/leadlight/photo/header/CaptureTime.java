package leadlight.photo.header;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Exif's capture time as ISO 8601. Exif writes local time of an unknown place; an offset is given
 * only where the file says one, and the computer's own zone is never used.
 */
final class CaptureTime {

  private static final DateTimeFormatter EXIF =
      DateTimeFormatter.ofPattern("uuuu:MM:dd HH:mm:ss").withResolverStyle(ResolverStyle.STRICT);
  private static final DateTimeFormatter OFFSET = DateTimeFormatter.ofPattern("xxx");
  private static final Pattern SUB_SECONDS = Pattern.compile("\\d{1,9}");
  private static final Pattern SIGNED_HOURS = Pattern.compile("[+-]\\d\\d:\\d\\d");

  private CaptureTime() {}

  /**
   * Joins the three tags.
   *
   * @param original DateTimeOriginal, "2026:03:01 09:05:07"; zeros or blanks mean unknown
   * @param subSeconds SubSecTimeOriginal: the digits after the decimal point
   * @param offset OffsetTimeOriginal, "+01:00", or blank
   * @return as "2026-03-01T09:05:07.12+01:00"; empty if the time is unknown or no real date
   */
  static Optional<String> iso(String original, String subSeconds, String offset) {
    try {
      LocalDateTime time = LocalDateTime.parse(clean(original), EXIF);
      String digits = clean(subSeconds);
      String fraction = SUB_SECONDS.matcher(digits).matches() ? "." + digits : "";
      return Optional.of(
          DateTimeFormatter.ISO_LOCAL_DATE_TIME.format(time) + fraction + zone(clean(offset)));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static String zone(String offset) {
    try {
      return SIGNED_HOURS.matcher(offset).matches() ? OFFSET.format(ZoneOffset.of(offset)) : "";
    } catch (DateTimeException e) {
      return "";
    }
  }

  /** Up to the first NUL, without blanks around. */
  private static String clean(String tag) {
    int end = tag.indexOf('\0');
    return (end < 0 ? tag : tag.substring(0, end)).strip();
  }
}

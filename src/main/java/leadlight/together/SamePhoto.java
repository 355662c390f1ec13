package leadlight.together;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import leadlight.model.UserError;
import leadlight.model.result.PhotoInfo;

/** A photo that is given twice: it says nothing anew, and would count as a second one. */
final class SamePhoto {

  private SamePhoto() {}

  static void refuse(List<PhotoInfo> photos) {
    Map<String, String> known = new HashMap<>();
    for (PhotoInfo photo : photos) {
      String before = known.putIfAbsent(photo.sha256(), photo.file());
      if (before != null) {
        throw new UserError(
            before
                + " and "
                + photo.file()
                + " are the same photo, byte for byte; join photos taken one by one");
      }
    }
  }
}

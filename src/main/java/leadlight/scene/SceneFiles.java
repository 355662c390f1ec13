package leadlight.scene;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import leadlight.model.UserError;

/** Scenes on disk: NAME.jpg, NAME.truth.json, NAME.scene.json. */
public final class SceneFiles {

  private static final ObjectMapper JSON =
      JsonMapper.builder()
          .enable(SerializationFeature.INDENT_OUTPUT)
          .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
          .build();

  private SceneFiles() {}

  /**
   * Reads a scene file.
   *
   * @throws UserError if it cannot be read or contradicts itself
   */
  public static SceneSpec read(Path file) {
    try {
      return JSON.readValue(file.toFile(), SceneSpec.class);
    } catch (IOException e) {
      String why = String.valueOf(e.getMessage()).lines().findFirst().orElse("unreadable");
      throw new UserError("scene file " + file + " cannot be used: " + why);
    }
  }

  /** The scene as text; reading it back gives the same scene. */
  public static byte[] text(SceneSpec spec) {
    return bytes(spec);
  }

  /**
   * Writes picture, truth and scene file; each appears whole or not at all.
   *
   * @throws UserError if the folder cannot be written
   */
  public static void write(Scene scene, Path folder) {
    String name = scene.spec().name();
    try {
      Files.createDirectories(folder);
      put(folder, name + ".jpg", jpeg(scene.picture(), scene.spec().camera().jpegQuality()));
      put(folder, name + ".truth.json", bytes(scene.truth()));
      put(folder, name + ".scene.json", bytes(scene.spec()));
    } catch (IOException e) {
      throw new UserError("cannot write " + name + " into " + folder + ": " + e.getMessage());
    }
  }

  private static byte[] bytes(Object value) {
    try {
      return JSON.writeValueAsBytes(value);
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void put(Path folder, String name, byte[] content) throws IOException {
    Path aside = folder.resolve(name + ".part");
    Files.write(aside, content);
    Files.move(aside, folder.resolve(name), StandardCopyOption.REPLACE_EXISTING);
  }

  /** The picture as JPEG, quality 0 to 1. */
  static byte[] jpeg(BufferedImage picture, double quality) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
      writer.setOutput(out);
      ImageWriteParam how = writer.getDefaultWriteParam();
      how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      how.setCompressionQuality((float) quality);
      writer.write(null, new IIOImage(picture, null, null), how);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }
}

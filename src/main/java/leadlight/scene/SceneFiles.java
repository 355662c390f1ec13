package leadlight.scene;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import leadlight.data.DataFile;
import leadlight.data.WholeFile;
import leadlight.scene.legs.LegScene;
import leadlight.scene.legs.LegSceneSpec;
import leadlight.scene.plan.SceneSpec;
import leadlight.scene.render.Scene;

/** Scenes on disk: NAME.jpg, NAME.truth.json, NAME.scene.json. */
public final class SceneFiles {

  private SceneFiles() {}

  /**
   * Reads a scene file.
   *
   * @throws leadlight.model.UserError if it cannot be read or contradicts itself
   */
  public static SceneSpec read(Path file) {
    return DataFile.at(file).read(SceneSpec.class);
  }

  /**
   * Writes picture, truth and scene file; the folder must exist.
   *
   * @throws leadlight.model.UserError if the folder cannot be written
   */
  public static void write(Scene scene, Path folder) {
    String name = scene.spec().name();
    byte[] picture = jpeg(scene.picture(), scene.spec().camera().sensor().jpegQuality());
    WholeFile.write(folder.resolve(name + ".jpg"), picture);
    DataFile.write(folder.resolve(name + ".truth.json"), scene.truth());
    DataFile.write(folder.resolve(name + ".scene.json"), scene.spec());
  }

  /**
   * Writes picture, truth and scene file of anchor legs; the folder must exist.
   *
   * @throws leadlight.model.UserError if the folder cannot be written
   */
  public static void write(LegScene scene, Path folder) {
    String name = scene.spec().name();
    byte[] picture = jpeg(scene.picture(), scene.spec().camera().sensor().jpegQuality());
    WholeFile.write(folder.resolve(name + ".jpg"), picture);
    DataFile.write(folder.resolve(name + ".truth.json"), scene.truth());
    DataFile.write(folder.resolve(name + ".legs.scene.json"), scene.spec());
  }

  /**
   * Reads a scene file of anchor legs.
   *
   * @throws leadlight.model.UserError if it cannot be read or contradicts itself
   */
  public static LegSceneSpec readLegs(Path file) {
    return DataFile.at(file).read(LegSceneSpec.class);
  }

  /** The picture as JPEG, quality 0 to 1. */
  public static byte[] jpeg(BufferedImage picture, double quality) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
      writer.setOutput(out);
      ImageWriteParam how = writer.getDefaultWriteParam();
      how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      how.setCompressionQuality((float) quality);
      writer.write(null, new IIOImage(picture, null, null), how);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }
}

package leadlight.vision;

import leadlight.vision.load.NativeLibrary;
import org.opencv.core.CvException;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.MatOfByte;
import org.opencv.dnn.Dnn;
import org.opencv.dnn.Net;

/**
 * A trained network with one input and one output. Its native parts live as long as it does; one
 * caller at a time is served, since a network keeps its intermediate results.
 */
public final class Network {

  private final Net net;

  /**
   * Reads a network.
   *
   * @param onnx a file in the Open Neural Network Exchange format
   * @throws IllegalArgumentException if it is none that can be run
   */
  public Network(byte[] onnx) {
    NativeLibrary.load();
    MatOfByte file = new MatOfByte(onnx);
    try {
      net = Dnn.readNetFromONNX(file);
    } catch (CvException e) {
      throw new IllegalArgumentException("the network cannot be read", e);
    } finally {
      MatScope.release(file);
    }
    if (net.empty()) {
      throw new IllegalArgumentException("the network holds no layers");
    }
    net.setPreferableBackend(Dnn.DNN_BACKEND_OPENCV);
    net.setPreferableTarget(Dnn.DNN_TARGET_CPU);
  }

  /**
   * Runs the network on several pictures at once.
   *
   * @param pictures their planes one after the other, picture by picture, row by row
   * @param count pictures
   * @param planes planes a picture
   * @param height rows
   * @param width columns
   * @return the output's values, one line a picture
   */
  public synchronized float[][] run(
      float[] pictures, int count, int planes, int height, int width) {
    return run(pictures, new int[] {count, planes, height, width});
  }

  /**
   * Runs the network on several lines of values at once.
   *
   * @param values line by line
   * @param count lines
   * @param length values a line
   * @return the output's values, one line a line
   */
  public synchronized float[][] run(float[] values, int count, int length) {
    return run(values, new int[] {count, length});
  }

  private float[][] run(float[] values, int[] shape) {
    try (MatScope scope = new MatScope()) {
      Mat in = scope.add(new Mat(shape, CvType.CV_32F));
      in.put(new int[shape.length], values);
      net.setInput(in);
      Mat out = scope.add(net.forward());
      float[][] lines = new float[shape[0]][out.cols()];
      for (int i = 0; i < lines.length; i++) {
        out.get(i, 0, lines[i]);
      }
      return lines;
    }
  }
}

package leadlight.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A whole process, from its start to its end, on Linux.
 *
 * @param seconds by the clock
 * @param processorSeconds of all its threads and of children that ended, as /proc/PID/stat last had
 *     them (at most {@value #LOOK_MS} ms before the end)
 * @param peakMb its most resident memory, VmHWM of /proc/PID/status, or that of its largest child
 * @param status what it ended with
 */
record ProcessRun(double seconds, double processorSeconds, double peakMb, int status) {

  private static final int LOOK_MS = 5;

  /** Clock ticks a second in /proc, the same on all Linux systems of today. */
  private static final double TICKS = 100;

  /** Runs a command to its end; what it prints is dropped. */
  static ProcessRun of(List<String> command) throws IOException, InterruptedException {
    long start = System.nanoTime();
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    double peakMb = 0;
    double processor = 0;
    while (process.isAlive()) {
      peakMb = Math.max(peakMb, peakMb(process.toHandle()));
      processor = Math.max(processor, processorSeconds(process.pid()));
      Thread.sleep(LOOK_MS);
    }
    double seconds = (System.nanoTime() - start) / 1e9;
    return new ProcessRun(seconds, processor, peakMb, process.exitValue());
  }

  /** The middle of a figure over runs; of an even number the upper one. */
  static double median(List<ProcessRun> runs, ToDoubleFunction<ProcessRun> figure) {
    return median(runs.stream().mapToDouble(figure).toArray());
  }

  static double median(double... values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }

  private static double peakMb(ProcessHandle process) {
    double mine = peakMb(process.pid());
    return Math.max(
        mine, process.descendants().mapToDouble(child -> peakMb(child.pid())).max().orElse(0));
  }

  private static double peakMb(long pid) {
    return read(pid, "status")
        .lines()
        .filter(line -> line.startsWith("VmHWM:"))
        .mapToDouble(line -> Double.parseDouble(line.replaceAll("[^0-9]", "")) / 1024)
        .findFirst()
        .orElse(0);
  }

  private static double processorSeconds(long pid) {
    String stat = read(pid, "stat");
    if (stat.isEmpty()) {
      return 0;
    }
    // Fields 14 to 17 of proc(5), counted behind the name, which may hold blanks.
    String[] fields = stat.substring(stat.lastIndexOf(')') + 2).split(" ");
    return Arrays.stream(fields, 11, 15).mapToDouble(Double::parseDouble).sum() / TICKS;
  }

  /** A file of /proc; empty if the process has ended. */
  private static String read(long pid, String file) {
    try {
      return Files.readString(Path.of("/proc/" + pid + "/" + file), StandardCharsets.ISO_8859_1);
    } catch (IOException gone) {
      return "";
    }
  }
}

package leadlight.scene;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntConsumer;

/** A set of scenes drawn from a mix, written as picture, truth and scene file each. */
public final class SceneSet {

  private final SceneSampler sampler;

  /** Prepares a set; the same mix and seed give the same pictures on any number of threads. */
  public SceneSet(SceneMix mix, long seed) {
    this.sampler = new SceneSampler(mix, seed);
  }

  /** The spec of one picture of the set, from 0. */
  public SceneSpec spec(int number) {
    return sampler.draw(number);
  }

  /**
   * Renders the first pictures of the set into a folder.
   *
   * @param done told the count of finished pictures, from any thread, one call at a time
   */
  public void write(int pictures, Path folder, int threads, IntConsumer done) {
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      List<Future<?>> jobs = new ArrayList<>();
      int[] count = {0};
      for (int n = 0; n < pictures; n++) {
        int number = n;
        jobs.add(
            pool.submit(
                () -> {
                  SceneFiles.write(SceneRenderer.render(spec(number)), folder);
                  synchronized (count) {
                    done.accept(++count[0]);
                  }
                }));
      }
      for (Future<?> job : jobs) {
        job.get();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw new IllegalStateException(e.getCause());
    } finally {
      pool.shutdownNow();
    }
  }
}

package leadlight.cli.score;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import leadlight.app.output.OutputFolder;
import leadlight.app.score.NudgeRun;
import leadlight.app.score.NudgeSitting;
import leadlight.app.score.PushList;
import leadlight.batch.list.Arrivals;
import leadlight.cli.batch.PushedLeads;
import leadlight.cli.terminal.StopSignal;
import leadlight.cli.terminal.Streams;
import leadlight.grade.Grader;
import leadlight.model.UserError;
import leadlight.page.words.PageContext;
import leadlight.text.Messages;

/** {@code leadlight watch --nudge}: says which lead to push next and ticks off what was seen. */
public final class NudgeWatch implements PushedLeads {

  private static final long PAUSE_MS = 100;

  private final Streams streams;
  private final CountDownLatch stop = new CountDownLatch(1);

  public NudgeWatch(Streams streams) {
    this.streams = streams;
  }

  @Override
  public int watch(Sitting asked) {
    OutputFolder.make(asked.place().out());
    try (StopSignal signal = new StopSignal();
        NudgeSitting sitting = NudgeSitting.at(asked.rest(), asked.settings(), asked.limits())) {
      signal.asks(stop::countDown);
      PushList list =
          new PushList(
              new Grader(
                      asked.limits(), asked.settings().productClass(), asked.settings().opinions())
                  .toProd(sitting.alone().joints()));
      begin(asked, list);
      take(asked, sitting, list);
      PageContext page = asked.pages().context(asked.limits(), asked.row());
      return new NudgeFiles(asked.limits(), page, asked.place(), false, streams)
          .write(sitting.result())
          .code();
    }
  }

  private void begin(Sitting asked, PushList list) {
    Messages words = asked.pages().words();
    streams.out().println(words.get("watch.nudge.how"));
    streams.out().println(words.get("watch.nudge.yield"));
    streams.out().println(list.next(words));
    streams.out().flush();
  }

  /** Takes photos until stopped, or until every lead of the list has told. */
  private void take(Sitting asked, NudgeSitting sitting, PushList list) {
    Arrivals arrivals = new Arrivals(asked.folder());
    boolean waiting = !list.done();
    while (waiting) {
      for (Path photo : look(arrivals, asked.folder())) {
        if (!NudgeRun.same(photo, asked.rest())) {
          one(photo, sitting, list, asked.pages().words());
        }
      }
      waiting = !list.done() && !stopped();
    }
  }

  private List<Path> look(Arrivals arrivals, Path folder) {
    try {
      return arrivals.look(System.nanoTime());
    } catch (IOException e) {
      throw new UserError(folder + " is gone or cannot be read; start again when it is back");
    }
  }

  private void one(Path photo, NudgeSitting sitting, PushList list, Messages words) {
    try {
      streams.out().println(list.took(sitting.add(photo), words));
    } catch (UserError e) {
      streams.err().println("leadlight: " + e.getMessage());
    }
    streams.out().println(list.next(words));
    streams.out().flush();
  }

  private boolean stopped() {
    try {
      return stop.await(PAUSE_MS, TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return true;
    }
  }
}

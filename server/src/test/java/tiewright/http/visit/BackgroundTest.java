package tiewright.http.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import tiewright.search.Stop;

@Timeout(60)
class BackgroundTest {
    private final Background background = new Background("a search");

    /** Like a search: goes on until its switch is pressed. */
    private static String untilPressed(Stop stop, CountDownLatch begun) {
        CountDownLatch pressed = new CountDownLatch(1);
        stop.onPress(pressed::countDown);
        begun.countDown();
        try {
            pressed.await();
        } catch (InterruptedException interrupted) {
            return "interrupted";
        }
        return "stopped";
    }

    @Test
    void searches_run_one_after_the_other_on_the_thread_of_that_name() throws Exception {
        Stop stop = new Stop();
        CountDownLatch begun = new CountDownLatch(1);
        CompletableFuture<String> first = background.begin(stop, () -> untilPressed(stop, begun));
        CompletableFuture<String> second =
                background.begin(new Stop(), () -> Thread.currentThread().getName() + first.isDone());
        begun.await();
        assertThat(second).isNotDone();
        stop.press();
        assertThat(first.get()).isEqualTo("stopped");
        assertThat(second.get()).startsWith("a search");
        background.close();
    }

    @Test
    void what_breaks_a_search_off_is_told_and_harms_no_other() throws Exception {
        CompletableFuture<String> broken = background.begin(new Stop(), () -> {
            throw new IllegalStateException("broken off, on purpose");
        });
        assertThatThrownBy(broken::get).hasRootCauseMessage("broken off, on purpose");
        assertThat(background.begin(new Stop(), () -> "found").get()).isEqualTo("found");
        background.close();
    }

    /** Often, for what it looks at is a race: the next search must not slip in between. */
    @RepeatedTest(300)
    void closing_presses_what_goes_on_and_begins_nothing_that_waits() throws Exception {
        Stop stop = new Stop();
        Stop waiting = new Stop();
        CountDownLatch begun = new CountDownLatch(1);
        AtomicBoolean ran = new AtomicBoolean();
        CompletableFuture<String> first = background.begin(stop, () -> untilPressed(stop, begun));
        CompletableFuture<Void> second = background.begin(waiting, () -> {
            ran.set(true);
            return null;
        });
        begun.await();
        background.close();
        assertThat(first.get(30, TimeUnit.SECONDS)).isIn("stopped", "interrupted");
        assertThat(stop.isPressed()).isTrue();
        assertThat(waiting.isPressed()).isTrue();
        assertThat(second).isNotDone();
        assertThat(ran).isFalse();
    }

    @Test
    void closing_leaves_what_is_finished_alone() throws Exception {
        Stop stop = new Stop();
        background.begin(stop, () -> "found").get();
        background.close();
        assertThat(stop.isPressed()).isFalse();
    }
}

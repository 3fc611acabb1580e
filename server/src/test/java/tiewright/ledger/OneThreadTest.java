package tiewright.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;

class OneThreadTest {
    private final List<String> done = new CopyOnWriteArrayList<>();
    private final OneThread thread = new OneThread("one");

    @Test
    void work_is_done_in_the_order_in_which_it_came_and_the_last_thing_last() {
        thread.later(() -> done.add("first"));
        thread.run(() -> done.add("second"));
        assertThat(done).containsExactly("first", "second");
        assertThat(thread.<Integer>call(done::size)).isEqualTo(2);
        thread.later(() -> done.add("third"));
        thread.close(() -> done.add("last"));
        assertThat(done).containsExactly("first", "second", "third", "last");
    }

    @Test
    void what_fails_is_thrown_to_who_asked_and_stops_nothing() {
        assertThatThrownBy(() -> thread.run(() -> {
                    throw new IllegalStateException("broken");
                }))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("broken");
        thread.run(() -> done.add("after"));
        assertThatThrownBy(() -> thread.close(() -> {
                    throw new IllegalStateException("at the end");
                }))
                .hasMessage("at the end");
        assertThat(done).containsExactly("after");
    }

    @Test
    void nothing_is_done_once_it_has_ended_and_the_way_out_is_no_waiting() {
        thread.close();
        assertThatThrownBy(() -> thread.run(() -> done.add("too late")))
                .isInstanceOfSatisfying(
                        LedgerException.class, why -> assertThat(why.isForNow()).isFalse())
                .hasMessage("The ledger is closed.");
        thread.close(() -> done.add("again"));
        assertThat(done).isEmpty();
    }
}

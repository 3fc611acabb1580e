package tiewright.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tiewright.event.ClubId;
import tiewright.event.Decision;
import tiewright.event.Event;
import tiewright.event.Fact;
import tiewright.event.FactKind;
import tiewright.event.PlayerId;
import tiewright.event.PrivateNote.PersonNamed;
import tiewright.event.Recorded;
import tiewright.event.Refusal;
import tiewright.event.SetUpFact.ClubEntered;
import tiewright.event.SetUpFact.CourtSet;
import tiewright.event.TieId;
import tiewright.wording.Words;

class LedgerTest {
    @TempDir
    Path folder;

    private Ledger ledger;

    @BeforeEach
    void open() {
        ledger = Ledger.open(folder, Asked.CLOCK);
    }

    @AfterEach
    void close() {
        ledger.close();
    }

    private void reopen() {
        ledger.close();
        open();
    }

    private static ClubEntered club(String code) {
        return new ClubEntered(ClubId.of(code), "Club " + code, Optional.empty(), OptionalInt.empty());
    }

    private Answer.Done done(String key, Decision decision) {
        return (Answer.Done) ledger.decide(Asked.request(key), decision);
    }

    @Test
    void every_kind_of_fact_reads_back_as_it_was() {
        List<Fact> examples = ExampleFacts.all();
        assertThat(examples.stream().map(Fact::kind).collect(Collectors.toSet()))
                .as("an example of every kind")
                .isEqualTo(EnumSet.allOf(FactKind.class));
        Instant device = Instant.parse("2026-02-28T08:59:59.999Z");
        Request request = new Request("k", Asked.DESK, Optional.of(device), OptionalLong.empty());

        List<Recorded> answered = ((Answer.Done) ledger.decide(request, Asked.facts(examples))).facts();
        Event event = ledger.event();
        reopen();

        assertThat(ledger.facts(0)).isEqualTo(answered);
        assertThat(ledger.facts(0)).extracting(Recorded::fact).isEqualTo(examples);
        assertThat(ledger.facts(0)).allSatisfy(recorded -> {
            assertThat(recorded.by()).isEqualTo(Asked.DESK);
            assertThat(recorded.deviceTime()).contains(device);
            assertThat(recorded.receivedAt()).isEqualTo(Asked.NINE);
        });
        assertThat(ledger.event()).isEqualTo(event);
    }

    @Test
    void the_same_key_is_answered_once_and_again_after_a_restart() {
        Answer.Done first = done("same", Asked.facts(club("A"), club("B")));
        Answer.Done second = done("same", Asked.facts(club("C")));
        reopen();
        Answer.Done third = done("same", Asked.facts(club("D")));

        assertThat(first.again()).isFalse();
        assertThat(second).isEqualTo(new Answer.Done(first.facts(), true));
        assertThat(third).isEqualTo(second);
        assertThat(ledger.facts(0)).isEqualTo(first.facts());
    }

    @Test
    void a_key_that_brought_only_notes_is_remembered_too() {
        PersonNamed ana = new PersonNamed(PlayerId.of("p1"), "Ana Ruiz", OptionalInt.of(2011));
        PersonNamed eve = new PersonNamed(PlayerId.of("p1"), "Eve", OptionalInt.empty());
        done("one", Asked.facts(club("A")));
        assertThat(done("names", Asked.notes(ana))).isEqualTo(new Answer.Done(List.of(), false));
        assertThat(done("names", Asked.notes(eve))).isEqualTo(new Answer.Done(List.of(), true));
        reopen();
        assertThat(ledger.directory().name(PlayerId.of("p1"))).isEqualTo("Ana Ruiz");
        assertThat(ledger.directory().isMinor(PlayerId.of("p1"), 2026)).isTrue();
    }

    @Test
    void a_refusal_appends_nothing_and_may_be_asked_again() {
        Decision refused = (event, given) -> Decision.Refused.because(Refusal.of("setup.no"));
        assertThat(ledger.decide(Asked.request("k"), refused))
                .isEqualTo(new Answer.Refused(List.of(Refusal.of("setup.no"))));
        assertThat(ledger.facts(0)).isEmpty();
        assertThat(done("k", Asked.facts(club("A"))).again()).isFalse();
    }

    @Test
    void a_form_is_stale_only_after_a_fact_that_bears_on_it() {
        CourtSet court = new CourtSet("1", Optional.empty(), Optional.empty(), true);
        done("a", Asked.facts(club("A")));
        Decision decision = Asked.staledBy(fact -> fact instanceof CourtSet, club("B"));

        done("b", Asked.facts(club("C")));
        assertThat(ledger.decide(Asked.seen("c", 1), decision)).isInstanceOf(Answer.Done.class);
        Recorded set = done("d", Asked.facts(court)).facts().get(0);
        assertThat(ledger.decide(Asked.seen("e", 3), decision)).isEqualTo(new Answer.Stale(List.of(set)));
        assertThat(ledger.decide(Asked.seen("e", 4), decision)).isInstanceOf(Answer.Done.class);
        assertThat(ledger.decide(Asked.request("f"), decision)).isInstanceOf(Answer.Done.class);
    }

    @Test
    void of_two_who_race_only_one_gets_what_only_one_can_have() throws Exception {
        ExecutorService both = Executors.newFixedThreadPool(2);
        for (int round = 0; round < 20; round++) {
            ClubId wanted = ClubId.of("club" + round);
            Decision firstOnly = (event, given) -> event.club(wanted).isPresent()
                    ? Decision.Refused.because(Refusal.of("taken"))
                    : Decision.Accepted.of(club(wanted.code()), club(wanted.code()));
            CountDownLatch go = new CountDownLatch(1);
            List<Future<Answer>> answers = IntStream.range(0, 2)
                    .mapToObj(who -> "r" + wanted + who)
                    .map(key -> both.submit(() -> {
                        go.await();
                        return ledger.decide(Asked.request(key), firstOnly);
                    }))
                    .toList();
            go.countDown();
            List<Class<?>> kinds = List.of(
                    answers.get(0).get().getClass(), answers.get(1).get().getClass());
            assertThat(kinds).containsExactlyInAnyOrder(Answer.Done.class, Answer.Refused.class);
        }
        both.shutdown();
        assertThat(ledger.facts(0))
                .extracting(Recorded::seq)
                .isEqualTo(IntStream.rangeClosed(1, 40).mapToObj(Long::valueOf).toList());
    }

    @Test
    void of_two_who_send_the_same_key_both_get_the_same_facts() throws Exception {
        ExecutorService both = Executors.newFixedThreadPool(2);
        Decision decision = Asked.facts(club("A"));
        Future<Answer> one = both.submit(() -> ledger.decide(Asked.request("k"), decision));
        Future<Answer> other = both.submit(() -> ledger.decide(Asked.request("k"), decision));
        assertThat(((Answer.Done) one.get()).facts()).isEqualTo(((Answer.Done) other.get()).facts());
        assertThat(((Answer.Done) one.get()).again()).isNotEqualTo(((Answer.Done) other.get()).again());
        both.shutdown();
    }

    @Test
    void an_interrupted_caller_does_not_harm_the_database() {
        Thread.currentThread().interrupt();
        done("a", Asked.facts(club("A")));
        assertThat(Thread.interrupted()).as("the interrupt is still there").isTrue();
        done("b", Asked.facts(club("B")));
        reopen();
        assertThat(ledger.facts(0)).hasSize(2);
    }

    @Test
    void an_older_event_is_seen_as_it_stood() {
        done("a", Asked.facts(club("A")));
        Event afterOne = ledger.event();
        done("b", Asked.facts(club("B"), club("C")));
        assertThat(ledger.asOf(1)).isEqualTo(afterOne);
        assertThat(ledger.asOf(0)).isEqualTo(Event.empty());
        assertThat(ledger.asOf(3)).isEqualTo(ledger.event());
        assertThat(ledger.facts(1)).extracting(Recorded::seq).containsExactly(2L, 3L);
        assertThat(ledger.facts(99)).isEmpty();
        assertThatThrownBy(() -> ledger.asOf(4)).hasMessage("there is no fact 4, the last is 3");
    }

    @Test
    void listeners_hear_every_change_in_order_and_one_that_fails_harms_nobody() throws Exception {
        BlockingQueue<Long> heard = new LinkedBlockingQueue<>();
        ledger.onChange(event -> {
            throw new IllegalStateException("a listener that fails, on purpose");
        });
        ledger.onChange(event -> heard.add(event.seq()));
        ledger.onChange(event -> {
            if (event.seq() == 1) {
                done("from-a-listener", Asked.facts(club("L")));
            }
        });
        done("a", Asked.facts(club("A")));
        assertThat(heard.poll(10, TimeUnit.SECONDS)).isEqualTo(1);
        assertThat(heard.poll(10, TimeUnit.SECONDS)).isEqualTo(2);
        ledger.decide(Asked.request("b"), (event, given) -> Decision.Refused.because(Refusal.of("no")));
        done("c", Asked.facts(club("C")));
        assertThat(heard.poll(10, TimeUnit.SECONDS))
                .as("nothing is told of a refusal")
                .isEqualTo(3);
    }

    @Test
    void a_decision_that_breaks_leaves_no_trace() {
        Decision breaks = (event, given) -> {
            throw new IllegalStateException("broken on purpose");
        };
        assertThatThrownBy(() -> ledger.decide(Asked.request("k"), breaks)).hasMessage("broken on purpose");
        PersonNamed twice = new PersonNamed(PlayerId.of("p1"), "One", OptionalInt.empty());
        CourtSet unkeepable =
                new CourtSet("1", Optional.of(java.time.LocalTime.of(9, 0, 0, 1)), Optional.empty(), true);
        Decision halfGood = (event, given) -> new Decision.Accepted(List.of(club("A"), unkeepable), List.of(twice));
        assertThatThrownBy(() -> ledger.decide(Asked.request("k"), halfGood))
                .hasMessage("a fact of the kind court_set cannot be kept as it is");
        reopen();
        assertThat(ledger.event()).isEqualTo(Event.empty());
        assertThat(ledger.directory().people()).isEmpty();
        assertThat(done("k", Asked.facts(club("A"))).again()).isFalse();
    }

    @Test
    void a_text_too_long_for_its_column_is_refused_beside_its_field() {
        ClubEntered longest = new ClubEntered(ClubId.of("A"), "x".repeat(400), Optional.empty(), OptionalInt.empty());
        ClubEntered longer = new ClubEntered(ClubId.of("A"), "x".repeat(401), Optional.empty(), OptionalInt.empty());
        assertThat(done("a", Asked.facts(longest)).facts()).hasSize(1);
        assertThat(ledger.decide(Asked.request("b"), Asked.facts(longer)))
                .isEqualTo(new Answer.Refused(List.of(Refusal.of("ledger.too-long")
                        .with("longest", 400)
                        .with("length", 401)
                        .at("name"))));
    }

    @Test
    void every_refusal_of_the_ledger_has_its_words() {
        Words words = Words.of(ledger.event(), ledger.directory());
        assertThat(words.sentence(
                        Refusal.of("ledger.too-long").with("longest", 400).with("length", 401)))
                .isEqualTo("This text has 401 characters. Keep it to 400.");
        assertThat(words.sentence(Refusal.of("ledger.sheet-unreadable")
                        .with("club", ClubId.of("N"))
                        .with("tie", TieId.of("A1"))))
                .isEqualTo(
                        "The sealed sheet of N for tie A1 cannot be read: its key is not in this folder. Ask N to seal again.");
    }
}

package tiewright.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import tiewright.event.ClubId;
import tiewright.event.Days;
import tiewright.event.NoteSubject;
import tiewright.event.Pair;
import tiewright.event.PairWish;
import tiewright.event.PlayerId;
import tiewright.event.PlayerWish;
import tiewright.event.PrivateNote;
import tiewright.event.PrivateNote.ChemistryJudged;
import tiewright.event.PrivateNote.FilmKept;
import tiewright.event.PrivateNote.FormJudged;
import tiewright.event.PrivateNote.GameGiven;
import tiewright.event.PrivateNote.HalfLifeChosen;
import tiewright.event.PrivateNote.HurtMarked;
import tiewright.event.PrivateNote.PlayerWished;
import tiewright.event.PrivateNote.RubbersPromised;
import tiewright.event.TieId;
import tiewright.scoring.Format;
import tiewright.scoring.Score;

/** Each version of a note in words, so that two captains see both. */
class NoteWordsTest {
    private static final ClubId N = ClubId.of("N");
    private static final PlayerId N1 = PlayerId.of("N1");
    private static final NoteWords WORDS = new NoteWords(Words.ofCodes(Days.ZONE));

    @Test
    void every_note_that_two_captains_can_write_is_said() {
        Map<PrivateNote, List<String>> said = new LinkedHashMap<>();
        said.put(
                new FormJudged(N1, OptionalDouble.of(3), OptionalDouble.of(1.5)),
                List.of("Form of N1", "+3 rallies in 100, could be wrong by 1.5"));
        said.put(
                new FormJudged(N1, OptionalDouble.of(-2.5), OptionalDouble.empty()),
                List.of("Form of N1", "-2.5 rallies in 100"));
        said.put(
                new FormJudged(N1, OptionalDouble.empty(), OptionalDouble.of(2)),
                List.of("Form of N1", "no judgement of the level, could be wrong by 2"));
        said.put(
                new ChemistryJudged(Pair.of("N1", "N2"), 0, OptionalDouble.empty(), Optional.of(PairWish.APART)),
                List.of("N1 and N2", "0 rallies in 100 as a pair, should not play together"));
        said.put(
                new ChemistryJudged(Pair.of("N1", "N2"), 2, OptionalDouble.of(1), Optional.of(PairWish.TOGETHER)),
                List.of("N1 and N2", "+2 rallies in 100, could be wrong by 1 as a pair, should play together"));
        said.put(
                new PlayerWished(TieId.of("A1"), N, N1, Optional.of(PlayerWish.PLAY)),
                List.of("N1 in tie A1", "must play"));
        said.put(
                new PlayerWished(TieId.of("A1"), N, N1, Optional.of(PlayerWish.REST)),
                List.of("N1 in tie A1", "must rest"));
        said.put(new RubbersPromised(N1, 2), List.of("Promise to N1", "at least 2 rubbers today"));
        said.put(new HalfLifeChosen(N, OptionalInt.of(90)), List.of("Older games", "a game counts half after 90 days"));
        said.put(new HurtMarked(N1, true), List.of("Hurt or ill: N1", "marked as hurt or ill"));
        said.put(new FilmKept(N, "g1", "about", "header\none\ntwo\n"), List.of("Filmed game g1", "2 rallies noted"));
        said.put(
                new GameGiven(
                        N,
                        4,
                        new PrivateNote.PastGame(
                                LocalDate.of(2026, 5, 2),
                                "N1",
                                "N2",
                                "Un, Known",
                                "S1",
                                Score.of(11, 4),
                                Format.sideOut(11),
                                Optional.empty())),
                List.of("Earlier game 4", "2026-05-02, N1 / N2 v Un, Known / S1, 11-4"));
        said.forEach((note, words) -> {
            NoteSubject subject = NoteSubject.of(note).orElseThrow();
            assertThat(List.of(WORDS.about(subject), WORDS.said(Optional.of(note))))
                    .isEqualTo(words);
        });
    }

    @Test
    void what_ends_and_what_is_not_there_is_nothing() {
        assertThat(WORDS.said(Optional.empty())).isEqualTo("nothing");
        assertThat(WORDS.said(Optional.of(new RubbersPromised(N1, 0)))).isEqualTo("nothing");
    }

    @Test
    void every_reason_against_a_note_has_its_sentence() {
        for (String code : List.of(
                "captain-only",
                "not-own-player",
                "not-own-tie",
                "club-gone",
                "form-out-of-range",
                "doubt-out-of-range",
                "half-life",
                "out-of-range",
                "past-too-many",
                "film-too-many",
                "film-there",
                "changed")) {
            assertThat(Words.has("notes." + code)).as(code).isTrue();
        }
    }
}

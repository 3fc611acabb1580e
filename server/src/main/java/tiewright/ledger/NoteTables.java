package tiewright.ledger;

import java.util.function.BiConsumer;
import org.jooq.DSLContext;
import tiewright.event.Decision.Sealed;
import tiewright.event.Decision.SealedRef;
import tiewright.event.PrivateNote;

/** Which table keeps which kind of note. */
final class NoteTables {
    private final DSLContext jooq;
    private final SealedSheets sheets;

    NoteTables(DSLContext jooq, SealedSheets sheets) {
        this.jooq = jooq;
        this.sheets = sheets;
    }

    void put(PrivateNote note) {
        Runnable put =
                switch (note.kind()) {
                    case PERSON_NAMED -> of(PrivateNote.PersonNamed.class, note, PrivateTables::put);
                    case HURT_MARKED -> of(PrivateNote.HurtMarked.class, note, PrivateTables::put);
                    case FORM_JUDGED -> of(PrivateNote.FormJudged.class, note, PrivateTables::put);
                    case CHEMISTRY_JUDGED -> of(PrivateNote.ChemistryJudged.class, note, PrivateTables::put);
                    case TIE_WISH -> of(PrivateNote.TieWish.class, note, WishTable::put);
                    case PLAYER_WISHED -> of(PrivateNote.PlayerWished.class, note, WishTable::put);
                    case RUBBERS_PROMISED -> of(PrivateNote.RubbersPromised.class, note, PromiseTable::put);
                    case HALF_LIFE_CHOSEN -> of(PrivateNote.HalfLifeChosen.class, note, PrivateTables::put);
                    case FORECAST -> of(PrivateNote.Forecast.class, note, ForecastTable::put);
                    case PLAYER_FORGOTTEN -> of(PrivateNote.PlayerForgotten.class, note, OnePlayer::forget);
                    case EVERYTHING_ERASED -> of(PrivateNote.EverythingErased.class, note, PrivateData::erase);
                    case SHEET_KEPT -> of(PrivateNote.SheetKept.class, note, this::keep);
                    case SHEET_DROPPED -> of(PrivateNote.SheetDropped.class, note, this::drop);
                    case FILM_KEPT -> of(PrivateNote.FilmKept.class, note, FilmTable::put);
                    case FILM_DROPPED -> of(PrivateNote.FilmDropped.class, note, FilmTable::drop);
                    case GAME_GIVEN -> of(PrivateNote.GameGiven.class, note, PastGameTables::give);
                    case GAME_TAKEN_BACK -> of(PrivateNote.GameTakenBack.class, note, PastGameTables::takeBack);
                    case PAST_GAME -> of(PrivateNote.PastGame.class, note, PastGameTables::put);
                };
        put.run();
    }

    private <N extends PrivateNote> Runnable of(Class<N> kind, PrivateNote note, BiConsumer<DSLContext, N> table) {
        return () -> table.accept(jooq, kind.cast(note));
    }

    private void keep(DSLContext inside, PrivateNote.SheetKept kept) {
        sheets.keep(inside, new SealedRef(kept.exchange(), kept.club()), new Sealed(kept.sheet(), kept.secret()));
    }

    private void drop(DSLContext inside, PrivateNote.SheetDropped dropped) {
        sheets.drop(inside, new SealedRef(dropped.exchange(), dropped.club()));
    }
}

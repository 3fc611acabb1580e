package tiewright.wording;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import tiewright.conditions.Withdrawal;
import tiewright.event.Because;
import tiewright.event.DrawFact;
import tiewright.event.ExchangeFact;
import tiewright.event.ExchangeId;
import tiewright.event.Fact;
import tiewright.event.How;
import tiewright.event.OfficialFact;
import tiewright.event.PlayFact;
import tiewright.event.Role;
import tiewright.event.RubberNo;
import tiewright.event.SetUpFact;
import tiewright.event.SheetKind;
import tiewright.event.Slot;
import tiewright.scoring.Score;

/**
 * Every fact in one sentence, {@code facts.KIND} in {@code facts.properties}: what the fact is made of stands in it by name, as
 * the reader of the {@link Words} may read it. Hashes of links, receipts and secrets are in no sentence.
 */
public final class FactWords {
    private final Words words;

    public FactWords(Words words) {
        this.words = words;
    }

    public String sentence(Fact fact) {
        Map<String, Object> said = new LinkedHashMap<>();
        parts(fact).forEach((name, part) -> said.put(name, part(name, part)));
        said.putAll(madeUp(fact));
        return words.sentence("facts." + fact.kind().code() + variant(fact), said);
    }

    /** Where one kind of fact can say two things: which of its sentences. */
    private static String variant(Fact fact) {
        if (fact instanceof SetUpFact one) {
            return ofSetUp(one);
        }
        if (fact instanceof OfficialFact one) {
            return ofOfficial(one);
        }
        if (fact instanceof DrawFact.RubberTimed one) {
            return one.umpires().isPresent() ? ".umpired" : "";
        }
        if (fact instanceof DrawFact.HallStopped one) {
            return one.until().isPresent() ? "" : ".goes-on";
        }
        if (fact instanceof ExchangeFact.ClubTold one) {
            return one.told() ? "" : ".taken-back";
        }
        return fact instanceof ExchangeFact.SideRuled one && one.forfeited() ? ".forfeited" : "";
    }

    private static String ofSetUp(SetUpFact fact) {
        if (fact instanceof SetUpFact.ConditionsPublished one) {
            return one.ruling().isPresent() ? ".by-ruling" : "";
        } else if (fact instanceof SetUpFact.CourtSet one) {
            return one.usable() ? "" : ".out";
        } else if (fact instanceof SetUpFact.CheckedIn one) {
            return one.present() ? "" : ".absent";
        } else if (fact instanceof SetUpFact.DeletionDated one) {
            return "." + one.names().code();
        } else if (fact instanceof SetUpFact.OpeningChosen one && one.organiserIsCaptain()) {
            return one.neutral().isPresent() ? ".person" : ".automatic";
        }
        return "";
    }

    private static String ofOfficial(OfficialFact fact) {
        if (fact instanceof OfficialFact.NoticeTold one) {
            return one.told() ? "" : ".taken-back";
        } else if (fact instanceof OfficialFact.CorrectionDecided one) {
            return "." + one.choice().code();
        } else if (fact instanceof OfficialFact.SignatureWithdrawn one) {
            return one.pool().isPresent() ? "" : ".event";
        } else if (fact instanceof OfficialFact.CaseRuled one) {
            return "." + one.penalty().code();
        } else if (fact instanceof OfficialFact.ProtestDecided one) {
            return one.upheld() ? ".upheld" : ".dismissed";
        }
        return "";
    }

    /** What a sentence needs and the fact has under no name of its own. */
    private Map<String, Object> madeUp(Fact fact) {
        if (fact instanceof PlayFact.CardEntered one) {
            return Map.of("score", score(one.games(), one.how()));
        } else if (fact instanceof PlayFact.CardCorrected one) {
            return Map.of("score", score(one.games(), one.how()), "why", because(one.because()));
        } else if (fact instanceof PlayFact.CardTakenBack one) {
            return Map.of("why", because(one.because()));
        } else if (fact instanceof OfficialFact.CorrectionDecided one) {
            return Map.of("score", score(one.games(), one.how()));
        } else if (fact instanceof OfficialFact.HeatDecided one) {
            return Map.of(
                    "degrees", BigDecimal.valueOf(one.tenths(), 1),
                    "measure", plain("heat." + one.measure()),
                    "tier", plain("heat.tier." + one.tier()));
        } else if (fact instanceof SetUpFact.ClubEntered one) {
            return Map.of("code", one.club().code());
        } else if (fact instanceof SetUpFact.DataErased one) {
            return Map.of("what", DeletionWords.counts(one.counts()));
        }
        return fact instanceof DrawFact.PoolsDrawn one
                ? Map.of("pools", one.pools().keySet())
                : Map.of();
    }

    /** What somebody typed, with the ruling that it rests on. */
    public String because(Because because) {
        if (because.ruling().isEmpty()) {
            return because.words();
        }
        Map<String, Object> said =
                Map.of("why", because.words(), "ruling", because.ruling().getAsInt());
        return words.sentence(because.words().isEmpty() ? "facts.ruling-alone" : "facts.why-and-ruling", said);
    }

    private Object part(String name, Object part) {
        if (part instanceof Optional<?> maybe) {
            return maybe.map(there -> part(name, there))
                    .orElseGet(() -> plain("rubber".equals(name) ? "whole-tie" : "nothing"));
        } else if (part instanceof OptionalInt number) {
            return number.isPresent() ? number.getAsInt() : plain("nothing");
        } else if (part instanceof ExchangeId exchange) {
            String key = exchange.kind() == SheetKind.DECIDER ? "facts.decider" : "facts.sheets";
            return words.sentence(key, Map.of("tie", exchange.tie()));
        } else if (part instanceof RubberNo rubber) {
            return rubber.isDecider() ? plain("the-decider") : words.sentence("facts.rubber", Map.of("rubber", rubber));
        } else if (part instanceof Slot slot) {
            return slot.club().<Object>map(club -> club).orElseGet(() -> part(name, slot.from()));
        } else if (part instanceof Withdrawal treatment) {
            return plain("treatment." + treatment.code());
        } else if (part instanceof LocalDate day) {
            return words.date(day);
        }
        return part instanceof Role role ? role.code() : part;
    }

    private String plain(String key) {
        return words.sentence("facts." + key, Map.of());
    }

    private String score(List<Score> games, How how) {
        String points =
                games.stream().map(game -> game.home() + "-" + game.away()).collect(Collectors.joining(", "));
        return how == How.PLAYED ? points : (points + " " + plain("how." + how.code())).strip();
    }

    private static Map<String, Object> parts(Fact fact) {
        Map<String, Object> parts = new LinkedHashMap<>();
        for (RecordComponent component : fact.getClass().getRecordComponents()) {
            try {
                parts.put(component.getName(), component.getAccessor().invoke(fact));
            } catch (ReflectiveOperationException cannotBe) {
                throw new IllegalStateException(
                        "a fact of the kind " + fact.kind().code() + " cannot be read", cannotBe);
            }
        }
        return parts;
    }
}

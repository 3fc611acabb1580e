package tiewright.event;

/** Something that happened. Facts are appended and never changed; a mistake is mended by a later fact. */
public sealed interface Fact permits SetUpFact, DrawFact, ExchangeFact, PlayFact, OfficialFact {
    FactKind kind();
}

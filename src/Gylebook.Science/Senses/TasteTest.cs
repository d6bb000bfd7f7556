namespace Gylebook.Science.Senses;

/// <summary>A way to ask people whether two beers taste different.</summary>
public enum TasteTest
{
    /// <summary>Three glasses, two of one beer: which is the odd one? Chance 1/3 (ISO 4120).</summary>
    Triangle,

    /// <summary>A known glass, then two: which is like it? Chance 1/2 (ISO 10399).</summary>
    DuoTrio,

    /// <summary>Two glasses: which has more of it? What is sought is known beforehand. Chance 1/2 (ISO 5495, one-sided).</summary>
    Paired,

    /// <summary>Two glasses: which has more of it? Either may. Chance 1/2, both sides counted (ISO 5495, two-sided).</summary>
    PairedEitherWay,

    /// <summary>Three glasses, one of the other beer: which has most of it? Chance 1/3.</summary>
    ThreeAlternatives,
}

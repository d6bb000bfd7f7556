using Gylebook.Engine.Readouts;

namespace Gylebook.Forecast.Treating;

/// <summary>What came of the mash.</summary>
/// <param name="Liquor">The treated liquor.</param>
/// <param name="Ph">pH of the mash; null without a grist that has titrations.</param>
/// <param name="Reading">What a meter says of it.</param>
/// <param name="Mend">What to add now.</param>
internal sealed record TreatedMash(TreatedLiquor Liquor, Band? Ph, MashReadingTold? Reading, MashMend? Mend);

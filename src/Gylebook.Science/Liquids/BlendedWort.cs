using Gylebook.Science.Quantities;

namespace Gylebook.Science.Liquids;

/// <summary>What a wort became after mixing, diluting or sweetening.</summary>
/// <param name="Volume">Its litres at 20 °C.</param>
/// <param name="Extract">Its strength.</param>
public readonly record struct BlendedWort(VolumeAt20C Volume, ApparentExtract Extract);

using Gylebook.Engine.Readouts;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Water;

namespace Gylebook.Forecast.Treating;

/// <summary>What one meter reading of the mash says.</summary>
/// <param name="Meter">What was read.</param>
/// <param name="PhAt20C">The same as a sample at 20 °C would read.</param>
/// <param name="Forecast">What was forecast for that mash before the reading, at 20 °C.</param>
/// <param name="Shift">By how much the whole grist's distilled-water pH is shifted against the plan's figures.</param>
/// <param name="Malts">The malts the reading is laid to, with what it teaches of them; empty when it cannot be laid to any.</param>
public sealed record MashReadingTold(MeterReading Meter, double PhAt20C, double Forecast, Band Shift, IReadOnlyList<LearnedMalt> Malts);

/// <summary>What a reading teaches of a malt: a line to put into the next plan.</summary>
/// <param name="Malt">Which.</param>
/// <param name="DistilledPh">Its pH in distilled water; the ends belong to the ends of the buffers in print.</param>
/// <param name="Buffer">The buffer the likely figure goes with, mEq/(kg·pH).</param>
public sealed record LearnedMalt(Malt Malt, Band DistilledPh, double Buffer);

/// <summary>What brings a measured mash to the pH wanted.</summary>
/// <param name="Acid">The acid; null when it is a salt.</param>
/// <param name="Salt">The alkaline salt; null when it is an acid.</param>
/// <param name="Amount">How much, mL or g, for the grist as stated and at both ends of the buffers in print.</param>
/// <param name="Units">What to measure out: the likely amount in steps of the measure, within the limits of the offer.</param>
/// <param name="Ph">pH then, at 20 °C.</param>
public sealed record MashMend(OfferedAcid? Acid, BrewingSalt? Salt, Band Amount, double Units, Band Ph);

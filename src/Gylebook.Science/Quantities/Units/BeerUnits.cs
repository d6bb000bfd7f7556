using static Gylebook.Science.Quantities.UnitScale;

namespace Gylebook.Science.Quantities;

/// <summary>Units of the trade: gravity, colour, alcohol, carbonation, hardness, bitterness.</summary>
internal static class BeerUnits
{
    // mg/L CaCO3 in a milliequivalent: half of 100.086 g/mol.
    private const double CarbonateEquivalent = 50.043;

    // mg/L CaO in a milliequivalent: half of 40.078 + 15.999 g/mol.
    private const double LimeEquivalent = (40.078 + 15.999) / 2;

    internal static QuantityKind Gravity { get; } =
        new("a gravity", [SpecificGravity.Limits, ApparentExtract.Limits],
        [
            new("SG", "density over that of water, in air, both at 20 °C", NonLinearUnits.GravityOverPlato),
            new("°P", "gram of sucrose in 100 g", Base, "P", "Plato", "degP", "°Plato"),
            new("Brix", "gram of sucrose in 100 g, by refractometer or hydrometer: the same scale as °P", Times(1), "°Bx", "Bx", "°Brix"),
        ])
        {
            // 1.068 can only be a gravity; 12 could be degrees of anything.
            Bare = new("SG", 0.9, 1.2),
        };

    internal static QuantityKind RealExtract { get; } = new("a real extract", [Quantities.RealExtract.Limits],
    [
        new("°P", "gram of extract in 100 g", Base, "P", "Plato", "degP", "°Plato"),
        new("Brix", "the same scale as °P", Times(1), "°Bx", "Bx", "°Brix"),
    ]);

    internal static QuantityKind BeerColour { get; } = new("a beer colour", [Quantities.BeerColour.Limits],
    [
        new("SRM", "12.7 × absorbance at 430 nm through 1 cm (ASBC Beer-10; method number from memory)", Base, "°SRM"),
        new("EBC", "25 × the same absorbance (EBC 9.6; method number from memory)", Times(12.7 / 25), "°EBC"),
        new("Lovibond", "SRM = 1.3546 °L - 0.76; from memory, common practice", new LinearScale(1.3546) { Offset = -0.76 }, "°L", "degL"),
    ]);

    internal static QuantityKind MaltColour { get; } = new("a malt colour", [Quantities.MaltColour.Limits],
    [
        new("EBC", "colour of the laboratory wort, as the certificate states it", Base, "°EBC"),
        new("Lovibond", "EBC = 2.65 °L - 1.2; common practice, no source", new LinearScale(2.65) { Offset = -1.2 }, "°L", "degL"),
    ]);

    internal static QuantityKind Alcohol { get; } =
        new("an alcohol content", [AlcoholByVolume.Limits, AlcoholByMass.Limits],
        [
            new("% ABV", "ethanol by volume at 20 °C", Base, "%ABV", "ABV", "% vol", "%vol"),
            new("% ABW", "ethanol by mass (OIML R 22)", NonLinearUnits.MassOverVolumeAlcohol, "%ABW", "ABW", "% mass", "%mass"),
        ]);

    internal static QuantityKind Carbonation { get; } = new("a carbonation", [Quantities.Carbonation.Limits],
    [
        new("volumes", "litre of ideal CO2 at 0 °C and 1 atm per litre of beer: 44.0095 / 22.414 = 1.9635 g/L",
            Times(Quantities.Carbonation.GramsPerLitreInOneVolume), "volume", "vol", "vols"),
        new("g/L", "gram per litre", Base, "g/l"),
    ]);

    internal static QuantityKind Hardness { get; } = new("a hardness or alkalinity", [Equivalents.Limits],
    [
        new("mg/L CaCO3", "as calcium carbonate: 50.043 mg in a milliequivalent", PerBase(CarbonateEquivalent),
            "mg/l CaCO3", "ppm CaCO3", "mg/L as CaCO3", "mg/l as CaCO3", "ppm as CaCO3"),
        new("dH", "German degree, 10 mg/L CaO (28.0385 mg in a milliequivalent)", PerBase(LimeEquivalent / 10), "°dH"),
        new("fH", "French degree, 10 mg/L CaCO3", PerBase(CarbonateEquivalent / 10), "°fH"),
        new("mEq/L", "milliequivalent per litre", Base, "meq/L", "meq/l", "mval/L", "mval/l"),
        new("°Clark", "one grain (64.79891 mg) of CaCO3 in an imperial gallon", PerBase(CarbonateEquivalent * 4.54609 / 64.79891), "Clark"),
        new("gr/US gal", "one grain (64.79891 mg) of CaCO3 in a US gallon", PerBase(CarbonateEquivalent * 3.785411784 / 64.79891), "gpg"),
    ]);

    internal static QuantityKind Bitterness { get; } = new("a bitterness", [Quantities.Bitterness.Limits],
    [
        new("IBU", "50 × absorbance at 275 nm of the extract (ASBC Beer-23A)", Base, "EBU", "BU"),
        new("mg/L", "milligram of iso-alpha acids per litre, which the scale was made to count", Times(1), "mg/l"),
    ]);
}

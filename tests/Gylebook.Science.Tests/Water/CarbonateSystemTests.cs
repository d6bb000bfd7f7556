using CsCheck;
using Gylebook.Science.Water;

namespace Gylebook.Science.Tests.Water;

public class CarbonateSystemTests
{
    [Theory] // Plummer and Busenberg (1982), worked to three decimals; pKw of phreeqc.dat
    [InlineData(0, 6.579, 10.629, 14.938, -1.108, 8.381)]
    [InlineData(5, 6.516, 10.554, 14.730, -1.192, 8.394)]
    [InlineData(10, 6.463, 10.488, 14.531, -1.269, 8.410)]
    [InlineData(15, 6.419, 10.428, 14.343, -1.341, 8.430)]
    [InlineData(20, 6.382, 10.376, 14.165, -1.407, 8.453)]
    [InlineData(25, 6.352, 10.329, 13.995, -1.468, 8.480)]
    [InlineData(30, 6.328, 10.288, 13.833, -1.524, 8.510)]
    [InlineData(40, 6.297, 10.222, 13.533, -1.625, 8.580)]
    [InlineData(50, 6.286, 10.174, 13.262, -1.711, 8.663)]
    [InlineData(65, 6.298, 10.134, 12.901, -1.816, 8.812)]
    [InlineData(75, 6.322, 10.125, 12.688, -1.874, 8.927)]
    public void Constants_follow_Plummer_and_Busenberg(
        double celsius, double pk1, double pk2, double pkw, double logHenry, double pkCalcite)
    {
        CarbonateConstants constants = CarbonateConstants.At(celsius);
        Assert.Equal(pk1, constants.Pk1, 0.00051);
        Assert.Equal(pk2, constants.Pk2, 0.00051);
        Assert.Equal(pkw, constants.Pkw, 0.00051);
        Assert.Equal(logHenry, constants.LogHenry, 0.00051);
        Assert.Equal(pkCalcite, constants.PkCalcite, 0.00051);
    }

    [Theory] // Millero et al. (2006) Marine Chem. 100, 80: an independent fit; both papers state about 0.003 to 0.005
    [InlineData(0)]
    [InlineData(10)]
    [InlineData(20)]
    [InlineData(25)]
    [InlineData(40)]
    [InlineData(50)]
    public void Constants_agree_with_Millero(double celsius)
    {
        double t = celsius + 273.15;
        double pk1 = (-126.34048 + (6320.813 / t) + (19.568224 * Math.Log(t)));
        double pk2 = (-90.18333 + (5143.692 / t) + (14.613358 * Math.Log(t)));
        CarbonateConstants constants = CarbonateConstants.At(celsius);
        Assert.Equal(pk1, constants.Pk1, 0.003);
        Assert.Equal(pk2, constants.Pk2, 0.003);
    }

    [Theory] // Harned and Scholes (1941) as tabulated by Stumm and Morgan; uncertain by 0.005
    [InlineData(0, 10.625)]
    [InlineData(5, 10.557)]
    [InlineData(10, 10.490)]
    [InlineData(15, 10.430)]
    [InlineData(20, 10.377)]
    [InlineData(25, 10.329)]
    [InlineData(30, 10.290)]
    [InlineData(40, 10.220)]
    [InlineData(50, 10.172)]
    public void Second_constant_agrees_with_Harned_and_Scholes(double celsius, double printed) =>
        Assert.Equal(printed, CarbonateConstants.At(celsius).Pk2, 0.005);

    [Theory] // Davies (1962), A = 0.509; four decimals
    [InlineData(0.001, 0.9651, 0.8674)]
    [InlineData(0.005, 0.9271, 0.7389)]
    [InlineData(0.01, 0.9021, 0.6622)]
    [InlineData(0.02, 0.8709, 0.5754)]
    [InlineData(0.05, 0.8215, 0.4555)]
    [InlineData(0.1, 0.7816, 0.3732)]
    public void Activity_follows_Davies(double ionicStrength, double once, double twice)
    {
        Assert.Equal(once, DaviesActivity.Coefficient(1, ionicStrength, 0.509), 0.000051);
        Assert.Equal(twice, DaviesActivity.Coefficient(2, ionicStrength, 0.509), 0.000051);
    }

    [Theory] // three decimals printed; the constant 1.825e6 in it is rounded too, worth 0.00014
    [InlineData(0, 0.492)]
    [InlineData(20, 0.507)]
    [InlineData(25, 0.511)]
    [InlineData(50, 0.537)]
    [InlineData(65, 0.556)]
    public void Slope_rises_with_temperature(double celsius, double slope) =>
        Assert.Equal(slope, DaviesActivity.Slope(celsius), 0.00065);

    [Theory] // USGS PHREEQC, phreeqc.dat, 20 °C. It pairs ions (0.046 mmol CaHCO3 in the first), we do not: 2.5 %
    [InlineData(4.9955, 7.5, 0.00969, 4.929, 0.0088, 0.340)]
    [InlineData(1.998, 8.5, 0.0031, 1.893, 0.0301, 0.0136)]
    [InlineData(2.000, 7.5, 0.0022, 1.9918, 0.0031, 0.1443)]
    public void Distribution_agrees_with_PHREEQC(
        double alkalinity, double ph, double ionicStrength, double bicarbonate, double carbonate, double carbonDioxide)
    {
        CarbonateSpecies species = CarbonateSystem.Distribution(CarbonateConstants.At(20, ionicStrength), alkalinity, ph);
        Assert.Equal(bicarbonate, species.Bicarbonate, bicarbonate * 0.025);
        Assert.Equal(carbonate, species.Carbonate, (carbonate * 0.025) + 0.00005);
        Assert.Equal(carbonDioxide, species.CarbonDioxide, (carbonDioxide * 0.025) + 0.00005);
    }

    [Theory] // USGS PHREEQC; its activity model differs by up to 0.01 pH
    [InlineData(25, 0.001, 8.269)]
    [InlineData(20, 0.005, 8.309)]
    public void Dissolved_baking_soda_has_the_ph_of_PHREEQC(double celsius, double molar, double ph)
    {
        CarbonateConstants constants = CarbonateConstants.At(celsius, molar);
        Assert.Equal(ph, CarbonateSystem.ClosedPh(constants, 1000 * molar, 1000 * molar), 0.01);
    }

    [Fact] // USGS PHREEQC, pCO2 10^-3.38, 25 °C: pH 5.600, total carbonate 16.7 µmol/L; last digit
    public void Pure_water_in_air_is_sour()
    {
        CarbonateConstants constants = CarbonateConstants.At(25);
        double ph = CarbonateSystem.OpenPh(constants, 0, CarbonateSystem.AirCarbonDioxide);

        // All alkalinity gone is pure water again; half of the last digit of pH is 2e-6 mEq/L of the little there is.
        Assert.Equal(2.000, CarbonateSystem.AcidToOpenPh(constants, 2.000, 5.600, CarbonateSystem.AirCarbonDioxide), 1e-5);
        Assert.Equal(5.600, ph, 0.002);
        double dissolved = 1e6 * CarbonateSystem.AirCarbonDioxide * Math.Pow(10, constants.LogHenry);
        Assert.Equal(16.7, dissolved * (1 + Math.Pow(10, ph - constants.ApparentPk1)), 0.05);
    }

    [Theory] // USGS PHREEQC, HCl into alkalinity 2.000 mEq/L, pH 7.5, 20 °C, I .0022; pH to 0.005
    [InlineData(0.5, 6.7284)]
    [InlineData(1.0, 6.3025)]
    [InlineData(1.5, 5.8450)]
    [InlineData(1.9, 5.0872)]
    public void Titration_agrees_with_PHREEQC(double acid, double ph)
    {
        CarbonateConstants constants = CarbonateConstants.At(20, 0.0022);
        double total = CarbonateSystem.TotalCarbonate(constants, 2.000, 7.5);
        Assert.Equal(ph, CarbonateSystem.ClosedPh(constants, 2.000 - acid, total), 0.005);
        Assert.Equal(acid, CarbonateSystem.AcidToPh(constants, 2.000, 7.5, ph), 0.0015);
    }

    [Theory] // a published table of 2013 (hobby literature) to pH 6, two decimals, its constants unknown: 0.015
    [InlineData(6.50, 0.96, 0.953, 1.491, 1.662)]
    [InlineData(6.75, 1.14, 1.145, 1.585, 1.725)]
    [InlineData(7.00, 1.25, 1.254, 1.638, 1.760)]
    [InlineData(7.25, 1.31, 1.315, 1.668, 1.780)]
    [InlineData(7.50, 1.35, 1.350, 1.684, 1.791)]
    [InlineData(8.00, 1.38, 1.382, 1.700, 1.802)]
    [InlineData(9.00, 1.41, 1.420, 1.719, 1.814)]
    [InlineData(9.50, 1.46, 1.470, 1.743, 1.830)]
    public void Acid_for_100_mg_of_alkalinity_agrees_with_the_table(
        double ph, double printedTo6, double to60, double to56, double to54)
    {
        CarbonateConstants constants = CarbonateConstants.At(20, 0.002);
        double alkalinity = 100 * HardnessUnits.MilligramsCalciumCarbonate;
        Assert.Equal(printedTo6, CarbonateSystem.AcidToPh(constants, alkalinity, ph, 6.0), 0.015);
        Assert.Equal(to60, CarbonateSystem.AcidToPh(constants, alkalinity, ph, 6.0), 0.001);
        Assert.Equal(to56, CarbonateSystem.AcidToPh(constants, alkalinity, ph, 5.6), 0.001);
        Assert.Equal(to54, CarbonateSystem.AcidToPh(constants, alkalinity, ph, 5.4), 0.001);
    }

    [Theory] // worked by hand at I .003: mEq, mL lactic 88 %, mL phosphoric 10 %, mL phosphoric 85 %
    [InlineData(15, 100, 7.5, 5.6, 25.23, 2.18, 22.9, 1.69)]
    [InlineData(15, 150, 7.8, 5.6, 38.07, 3.29, 34.6, 2.54)]
    [InlineData(12, 250, 7.3, 5.4, 53.35, 4.66, 48.9, 3.60)]
    [InlineData(10, 50, 8.0, 5.8, 7.80, 0.67, 7.0, 0.51)]
    public void Sparge_liquor_takes_so_much_acid(
        double litres, double asChalk, double ph, double target, double acid, double lactic, double phosphoric10, double phosphoric85)
    {
        double each = CarbonateSystem.AcidToPh(
            CarbonateConstants.At(20, 0.003), asChalk * HardnessUnits.MilligramsCalciumCarbonate, ph, target);
        Assert.Equal(acid, each * litres, acid * 0.001);
        Assert.Equal(lactic, AcidAsSold.Find("lactic-88").UnitsFor(each * litres, target), 0.0051);
        Assert.Equal(phosphoric10, AcidAsSold.Find("phosphoric-10").UnitsFor(each * litres, target), 0.051);
        Assert.Equal(phosphoric85, AcidAsSold.Find("phosphoric-85").UnitsFor(each * litres, target), 0.0051);
    }

    [Fact]
    public void More_acid_never_raises_ph() =>
        Gen.Select(Gen.Double[0, 8], Gen.Double[5.5, 9.5], Gen.Double[0, 4], Gen.Double[0, 4])
            .Sample((alkalinity, ph, acid, more) =>
            {
                CarbonateConstants constants = CarbonateConstants.At(20, 0.003);
                double total = CarbonateSystem.TotalCarbonate(constants, alkalinity, ph);
                double first = CarbonateSystem.ClosedPh(constants, alkalinity - acid, total);
                return CarbonateSystem.ClosedPh(constants, alkalinity - acid - more, total) <= first + 1e-12;
            });

    [Fact]
    public void A_water_keeps_its_own_ph() =>
        Gen.Select(Gen.Double[0.1, 8], Gen.Double[5.5, 9.0], Gen.Double[0, 60])
            .Sample((alkalinity, ph, celsius) =>
            {
                CarbonateConstants constants = CarbonateConstants.At(celsius, 0.003);
                double total = CarbonateSystem.TotalCarbonate(constants, alkalinity, ph);
                return total == 0 || Math.Abs(CarbonateSystem.ClosedPh(constants, alkalinity, total) - ph) < 1e-7;
            });

    [Theory]
    [InlineData(double.NaN, 0)]
    [InlineData(-5, 0)]
    [InlineData(120, 0)]
    [InlineData(20, -0.1)]
    [InlineData(20, 3)]
    public void Nonsense_is_refused(double celsius, double ionicStrength) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CarbonateConstants.At(celsius, ionicStrength));
}

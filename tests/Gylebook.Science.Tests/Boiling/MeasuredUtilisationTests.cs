using Gylebook.Science.Boiling;

namespace Gylebook.Science.Tests.Boiling;

/// <summary>
/// Both models against a tracked brewery of 50 US barrels (Justus 2018, MBAA TQ 55(3):67–74, abstract): average utilisation into
/// wort 44.0 % from 60 minutes, 29.9 % from the whirlpool, 9.1 % from the mash; 33.7 % of the bitterness lost in the cellar.
/// </summary>
public class MeasuredUtilisationTests
{
    private const double IntoWort = 0.440;
    private const double Whirlpool = 0.299;
    private const double LostInCellar = 0.337;

    // Trub takes 5 to 10 % of the iso-alpha acid (handbooks, from memory): the kettle's yield must reach the wort within that.
    [Fact]
    public void Kinetics_after_an_hour_and_the_trub_bracket_what_reached_the_wort()
    {
        double kettle = IsomerisationKinetics.IsoAlphaAcid(60, 100);
        Assert.InRange(IntoWort, kettle * (1 - 0.10), kettle * (1 - 0.05));
    }

    // The abstract gives no time or temperature. Whirlpools stand hot for some 20 to 90 min, rest and run-off together, at 90 to 98 °C.
    [Fact]
    public void Kinetics_reach_the_whirlpools_utilisation_within_the_times_whirlpools_take()
    {
        Assert.True(IsomerisationKinetics.IsoAlphaAcid(20, 90) < Whirlpool);
        Assert.True(IsomerisationKinetics.IsoAlphaAcid(90, 98) > Whirlpool);
    }

    // Documented misfit, not a success: the table stays a fifth below the beer that was measured, at 1.050.
    [Fact]
    public void Time_and_gravity_stays_a_fifth_below_the_measured_beer()
    {
        double inBeer = IntoWort * (1 - LostInCellar);
        Assert.Equal(0.2917, inBeer, tolerance: 0.00005);
        Assert.InRange(TimeAndGravityBitterness.Utilisation(60, 1.050) / inBeer, 0.75, 0.85);
    }
}

namespace Gylebook.Science.Boiling;

/// <summary>How hops lose alpha acid in store.</summary>
/// <remarks>
/// <para>Symbols: HSI hop storage index, A275/A325 of the methanol extract; lost per cent in 6 months at 20 °C
/// = 110·log10(HSI/0.25); k = −ln(1 − lost)/180 per day; A = A0·e^(−k·TF·SF·days), TF = 2^((t−20)/15) with t in °C, SF 1
/// open to the air, 0.75 behind a barrier with some air, 0.5 behind a barrier without.</para>
/// <para>Source: Garetz 1994, BrewingTechniques 2(1); storage index: Nickerson, as quoted there, and ASBC Hops-12 (from
/// memory). SF from memory.</para>
/// <para>Valid for: −20 to 30 °C, about two years.</para>
/// <para>Accuracy: none stated. At 20 °C it keeps to the 70 to 85 % that other growers' figures give after six months and
/// to their 4.4 to 6.5 % of 9.0 % after twelve.</para>
/// <para>Notes: the article prints the alpha acid at the start as AN·100/(100·lost). A minus sign fell out:
/// it is AN·100/(100 − lost), <see cref="AlphaBeforeLoss"/>.</para>
/// </remarks>
public static class HopAgeing
{
    private const double SixMonthsDays = 180;
    private const double FreshStorageIndex = 0.25;

    /// <summary>Share of the alpha acid lost, 0 to 1, that a storage index tells of.</summary>
    /// <param name="storageIndex">A275/A325, from 0.25 (fresh) to 2.</param>
    public static double LostAt(double storageIndex)
    {
        Argument.MustBeWithin(storageIndex, FreshStorageIndex, 2);
        return Math.Min(1, 1.10 * Math.Log10(storageIndex / FreshStorageIndex));
    }

    /// <summary>Rate of loss at 20 °C in the open, per day.</summary>
    /// <param name="lostInSixMonths">Share lost in six months at 20 °C, from 0 to below 1.</param>
    public static double PerDay(double lostInSixMonths)
    {
        Argument.MustBeWithin(lostInSixMonths, 0, 0.999);
        return -Math.Log(1 - lostInSixMonths) / SixMonthsDays;
    }

    /// <summary>How much faster or slower than at 20 °C: half for each 15 °C cooler.</summary>
    public static double TemperatureFactor(double celsius)
    {
        Argument.MustBeWithin(celsius, -80, 60);
        return Math.Pow(2, (celsius - 20) / 15);
    }

    /// <summary>How much slower than in the open.</summary>
    public static double PackFactor(HopPack pack) => pack switch
    {
        HopPack.Open => 1,
        HopPack.SomeAir => 0.75,
        HopPack.Airless => 0.5,
        _ => throw new ArgumentOutOfRangeException(nameof(pack), pack, "No such pack."),
    };

    /// <summary>Share of the alpha acid that is left.</summary>
    /// <param name="days">Days since the assay.</param>
    /// <param name="celsius">Temperature of the store, °C.</param>
    /// <param name="pack">What keeps the air out.</param>
    /// <param name="lostInSixMonths">Share this cultivar loses in six months at 20 °C.</param>
    public static double ShareLeft(double days, double celsius, HopPack pack, double lostInSixMonths)
    {
        Argument.MustNotBeNegative(days);
        return Math.Exp(-PerDay(lostInSixMonths) * TemperatureFactor(celsius) * PackFactor(pack) * days);
    }

    /// <summary>Alpha acid at harvest, from today's and what has been lost since.</summary>
    /// <param name="alphaNow">Alpha acid now, any unit.</param>
    /// <param name="lost">Share lost, from 0 to below 1.</param>
    public static double AlphaBeforeLoss(double alphaNow, double lost)
    {
        Argument.MustNotBeNegative(alphaNow);
        Argument.MustBeWithin(lost, 0, 0.999);
        return alphaNow / (1 - lost);
    }

    /// <summary>Whether the law was made for hops so old and so kept.</summary>
    public static bool IsWithinPublishedRange(double days, double celsius) => days is >= 0 and <= 730 && celsius is >= -20 and <= 30;
}

/// <summary>What keeps the air from hops.</summary>
public enum HopPack
{
    /// <summary>Nothing: a bag that is not sealed.</summary>
    Open,

    /// <summary>A barrier with some air inside.</summary>
    SomeAir,

    /// <summary>A barrier, and vacuum or inert gas inside.</summary>
    Airless,
}

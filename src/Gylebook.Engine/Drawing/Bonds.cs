using Gylebook.Engine.Parameters;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Engine.Drawing;

/// <summary>What holds draws of several parameters together: sums that stay, and the mass of a labelled food.</summary>
/// <remarks>
/// Shares of a whole are drawn as log-ratios to the largest, which itself does not move, and then brought to their sum. Parts of a label are
/// drawn each between its ends, and what is then too much or too little is taken from, or given to, all of them in proportion to
/// the room each still has to its end: so each stays between its ends, and the parts weigh what they weigh at the medians. Figures of a food that are no
/// mass (ions, what it holds) keep their own draws.
/// </remarks>
internal static class Bonds
{
    /// <summary>What hangs together has one name: a bond, the food of a label, or the parameter's own id.</summary>
    public static string NameOf(Parameter parameter) => parameter.Prior switch
    {
        Prior.Label label => $"label {label.Food}",
        Prior.Spread { Tie: { Kind: TieKind.Sum or TieKind.Rest or TieKind.One } tie } => $"{tie.Kind} {tie.Name}",
        _ => parameter.Id,
    };

    /// <summary>Brings all of them to balance, or those of some names.</summary>
    /// <param name="draws">The draws; written over.</param>
    /// <param name="names">The bonds to hold; null for all.</param>
    /// <param name="still">Places that stay where they are: the others of their bond alone give way; null for none.</param>
    public static void Hold(Draws draws, IReadOnlySet<string>? names = null, IReadOnlySet<int>? still = null)
    {
        List<int> moving = [.. draws.Moving.ToArray().Where(place => names?.Contains(NameOf(draws.Parameters[place])) != false)];
        foreach (IGrouping<Tie, int> bond in moving.GroupBy(place => draws.Parameters[place].Prior is Prior.Spread spread ? spread.Tie : Tie.None))
        {
            switch (bond.Key.Kind)
            {
                case TieKind.Sum: KeepSum(draws, [.. bond], still); break;
                case TieKind.Rest: LeaveRest(draws, [.. bond]); break;
                default: break;
            }
        }

        foreach (IGrouping<string, int> food in moving.Where(place => LabelOf(draws, place) is { IsPart: true }).GroupBy(place => LabelOf(draws, place)!.Food))
        {
            KeepMass(draws, [.. food], still);
        }
    }

    /// <summary>One draw of all parameters, with those bonds brought to balance, and those places left where they are.</summary>
    public static double[] Held(Draws draws, double[] values, IReadOnlySet<string> names, IReadOnlySet<int>? still = null)
    {
        Draws one = draws.One(values);
        Hold(one, names, still);
        double[] held = [.. values];
        one.Put(0, held);
        return held;
    }

    private static Prior.Label? LabelOf(Draws draws, int place) => draws.Parameters[place].Prior as Prior.Label;

    private static void KeepSum(Draws draws, int[] members, IReadOnlySet<int>? still)
    {
        int[] giving = Giving(members, still), staying = [.. members.Except(giving)];
        double whole = members.Sum(place => draws.Parameters[place].Median);
        for (int draw = 0; draw < draws.Count; draw++)
        {
            double scale = (whole - SumOf(draws, staying, draw)) / SumOf(draws, giving, draw);
            foreach (int place in giving)
            {
                draws.Column(place)[draw] *= scale;
            }
        }
    }

    private static void LeaveRest(Draws draws, int[] members)
    {
        int rest = members.Single(place => draws.Parameters[place].Prior is Prior.Spread { Between.Family: Family.Point });
        double whole = members.Sum(place => draws.Parameters[place].Median);
        Span<double> column = draws.Column(rest);
        for (int draw = 0; draw < draws.Count; draw++)
        {
            column[draw] += whole - SumOf(draws, members, draw);
        }
    }

    private static void KeepMass(Draws draws, int[] parts, IReadOnlySet<int>? still)
    {
        int[] giving = Giving(parts, still);
        double whole = parts.Sum(place => draws.Parameters[place].Median);
        for (int draw = 0; draw < draws.Count; draw++)
        {
            double missing = whole - SumOf(draws, parts, draw), room = 0;
            foreach (int place in giving)
            {
                room += EndOf(draws, place, missing) - draws.Column(place)[draw];
            }

            double share = room == 0 ? 0 : Math.Min(1, missing / room);
            foreach (int place in giving)
            {
                ref double its = ref draws.Column(place)[draw];
                its += share * (EndOf(draws, place, missing) - its);
            }
        }
    }

    private static int[] Giving(int[] members, IReadOnlySet<int>? still) => still is null ? members : [.. members.Where(place => !still.Contains(place))];

    /// <summary>The end towards which a part has to go.</summary>
    private static double EndOf(Draws draws, int place, double missing) =>
        LabelOf(draws, place) is var label && missing > 0 ? label!.High : label!.Low;

    private static double SumOf(Draws draws, int[] members, int draw)
    {
        double sum = 0;
        foreach (int place in members)
        {
            sum += draws.Column(place)[draw];
        }

        return sum;
    }
}

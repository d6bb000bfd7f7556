using Gylebook.Engine.Parameters;
using Gylebook.Science.Numerics;
using Gylebook.Science.Numerics.Distributions;

namespace Gylebook.Engine.Drawing;

/// <summary>Thousands of draws of a plan's parameters, a column a parameter: what may be true of a brew, each draw as likely as the next.</summary>
/// <remarks>
/// A column hangs on the seed, the count, and its own id, width and median, and on nothing else: neither another parameter nor the order of lines
/// moves it. It is a Latin hypercube of midpoints: as many strata as draws, each met once, in an order of chance
/// (<see cref="SeededRandom"/>). Why not another way, measured: decision 0025. A figure's own middle is drawn between brewers, lots and
/// strains, and about that middle the gyle's, within one; both have streams of their own. What a parameter is tied to, and the parts of
/// a label, are brought into balance afterwards (<see cref="Bonds"/>).
/// </remarks>
public sealed class Draws
{
    private readonly int[] _moving;
    private readonly int[] _columns;
    private readonly double[] _values;

    private Draws(IReadOnlyList<Parameter> parameters, int count)
    {
        Parameters = parameters;
        Count = count;
        _moving = [.. Enumerable.Range(0, parameters.Count).Where(i => parameters[i].Prior is not Prior.Still)];
        _columns = new int[parameters.Count];
        Array.Fill(_columns, -1);
        for (int column = 0; column < _moving.Length; column++)
        {
            _columns[_moving[column]] = column;
        }

        _values = GC.AllocateUninitializedArray<double>(_moving.Length * count);
    }

    private Draws(Draws other)
    {
        (Parameters, Count, _moving, _columns) = (other.Parameters, other.Count, other._moving, other._columns);
        _values = [.. other._values];
    }

    /// <summary>Draws of parameters.</summary>
    /// <param name="parameters">The parameters.</param>
    /// <param name="seed">A readable word.</param>
    /// <param name="count">How many; at least 1.</param>
    public static Draws Of(IReadOnlyList<Parameter> parameters, string seed, int count) =>
        Of(parameters, count, new Strata(count), (what, places) => SeededRandom.Of(seed, what).Shuffle(places));

    /// <summary>The same by another way of choosing strata, which may be finer than the draws are many.</summary>
    internal static Draws Of(IReadOnlyList<Parameter> parameters, int count, Strata strata, StrataOf places)
    {
        ArgumentNullException.ThrowIfNull(parameters);
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        Draws draws = new(parameters, count);
        double[] sorted = new double[strata.Count];
        int[] order = new int[count];
        foreach (int parameter in draws._moving)
        {
            draws.Fill(parameter, strata, places, sorted, order);
        }

        Bonds.Hold(draws);
        return draws;
    }

    /// <summary>What is drawn.</summary>
    public IReadOnlyList<Parameter> Parameters { get; }

    /// <summary>How many draws.</summary>
    public int Count { get; }

    /// <summary>Places of the parameters that are not the same in all draws, in order.</summary>
    public ReadOnlySpan<int> Moving => _moving;

    /// <summary>A parameter's draws; none where it stays at its median.</summary>
    public ReadOnlySpan<double> this[int parameter] => Column(parameter);

    /// <summary>Writes what moves of one draw over a buffer that holds the medians, or another draw.</summary>
    public void Put(int draw, Span<double> into)
    {
        for (int column = 0, at = draw; column < _moving.Length; column++, at += Count)
        {
            into[_moving[column]] = _values[at];
        }
    }

    /// <summary>The place of the parameter of that id; null where there is none.</summary>
    public int? PlaceOf(string id)
    {
        for (int place = 0; place < Parameters.Count; place++)
        {
            if (Parameters[place].Id == id)
            {
                return place;
            }
        }

        return null;
    }

    /// <summary>The same draws, with the figures of every parameter that other draws, as many, have too.</summary>
    public Draws Told(Draws other)
    {
        ArgumentNullException.ThrowIfNull(other);
        Draws told = Copy();
        foreach (int place in Moving)
        {
            if (other.PlaceOf(Parameters[place].Id) is { } there && other[there].Length == Count)
            {
                other[there].CopyTo(told.Column(place));
            }
        }

        return told;
    }

    /// <summary>A single draw of the same parameters, with those values.</summary>
    internal Draws One(ReadOnlySpan<double> values)
    {
        Draws one = new(Parameters, 1);
        foreach (int place in one._moving)
        {
            one.Column(place)[0] = values[place];
        }

        return one;
    }

    /// <summary>The same draws, to be moved.</summary>
    internal Draws Copy() => new(this);

    /// <summary>A parameter's draws to write.</summary>
    internal Span<double> Column(int parameter) => _columns[parameter] is >= 0 and var column ? _values.AsSpan(column * Count, Count) : [];

    private void Fill(int place, Strata strata, StrataOf places, double[] sorted, int[] order)
    {
        Parameter parameter = Parameters[place];
        Span<double> column = Column(place);
        string key = parameter.Prior is Prior.Spread { Tie: { Kind: TieKind.One } tie } ? $"one {tie.Name}" : parameter.Id;
        parameter.Prior.About(parameter.Median).Fill(strata.Shares, strata.Normals, sorted);
        places(key, order);
        for (int i = 0; i < column.Length; i++)
        {
            column[i] = sorted[order[i]];
        }

        if (parameter.Prior is Prior.Spread { Within: { } within })
        {
            places($"{key} within", order);
            within.Scatter(column, strata.Shares, strata.Normals, order);
        }
    }
}

using Gylebook.Engine.State;

namespace Gylebook.Engine.Readouts;

/// <summary>What one hop brings to the served beer, by both models.</summary>
public sealed record HopReadouts
{
    /// <summary>The rows of a hop.</summary>
    /// <param name="addition">Its row among the additions.</param>
    /// <param name="place">Where it went in.</param>
    public HopReadouts(int addition, Place place)
    {
        Addition = addition;
        Readout Row(string key, string title, ReadoutOf of) => new(Invariant($"hop.{addition}.{key}"), title, "IBU", 1, place, of);
        TimeGravity = Row("timeGravity", "bitterness by time and gravity", (in run) => Part(
            run, addition, BitternessModel.TimeGravity, static (in r, row) => r.Trace.Bitterness(row)));
        Isomerisation = Row("isomerisation", "bitterness by kinetics", (in run) => Part(
            run, addition, BitternessModel.Isomerisation, static (in r, row) => HopAlone.IsoAlphaAcid(r, row)));
    }

    /// <summary>Its row among the additions.</summary>
    public int Addition { get; }

    /// <summary>By the table of time and gravity.</summary>
    public Readout TimeGravity { get; }

    /// <summary>By isomerisation kinetics.</summary>
    public Readout Isomerisation { get; }

    /// <summary>Both.</summary>
    public IEnumerable<Readout> All => [TimeGravity, Isomerisation];

    /// <summary>The whole beer's bitterness, shared out by what each hop would have brought alone.</summary>
    private static double Part(in RunView run, int addition, BitternessModel model, PortionReadoutOf alone)
    {
        double all = 0;
        for (int row = 0; row < run.Plan.Additions.Length; row++)
        {
            all += run.Plan.Additions[row].Hop.Grams > 0 ? alone(run, row) : 0;
        }

        return all > 0 ? BeerReadouts.BitternessBy(run, model) * alone(run, addition) / all : 0;
    }
}

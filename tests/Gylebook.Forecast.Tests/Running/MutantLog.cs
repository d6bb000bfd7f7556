using Gylebook.Engine.Stages;
using Gylebook.Engine.State;
using Gylebook.Forecast.Records;

namespace Gylebook.Forecast.Tests.Running;

/// <summary>What a mutant does to one entry of the log.</summary>
internal enum Lie
{
    ScaleLoss,
    DropLoss,
    ScaleAddition,
    DropAddition,
}

/// <summary>A log that lies once, about the nth entry: by a millionth, or by leaving it out.</summary>
internal struct MutantLog(RunRecord record, Lie lie, int nth) : IRunLog
{
    private const double Millionth = 1 + 1e-6;

    private readonly FullLog _honest = new(record);
    private int _additions = -1;
    private int _losses = -1;

    /// <summary>Whether the nth entry came by, and was of something.</summary>
    public bool Lied { get; private set; }

    public void Added(Stage stage, int portion, in Wort added)
    {
        _additions++;
        if (Told(added, lie is Lie.ScaleAddition or Lie.DropAddition, _additions) is Wort told)
        {
            _honest.Added(stage, portion, told);
        }
    }

    public void Lost(Stage stage, int portion, Loss what, in Wort lost)
    {
        _losses++;
        if (Told(lost, lie is Lie.ScaleLoss or Lie.DropLoss, _losses) is Wort told)
        {
            _honest.Lost(stage, portion, what, told);
        }
    }

    public readonly void Reached(Stage stage, int portion, in Portion state) => _honest.Reached(stage, portion, state);

    public readonly void Bittered(int addition, double milligrams) => _honest.Bittered(addition, milligrams);

    private Wort? Told(in Wort what, bool aboutThis, int number)
    {
        if (!aboutThis || number != nth)
        {
            return what;
        }

        Lied = true;
        if (lie is Lie.DropLoss or Lie.DropAddition)
        {
            return null;
        }

        Wort scaled = default;
        scaled.Add(what, Millionth);
        return scaled;
    }
}

namespace Gylebook.Fuzz.Tests;

/// <summary>Whatever files say: findings, and never an exception, a number that is none, a litre below nought, a hang or a second answer.</summary>
public sealed class FuzzTests(ITestOutputHelper output)
{
    [Fact]
    public void Mutated_files_make_findings_and_nothing_else()
    {
        (int all, int ran) = FuzzRun.Run(FuzzRun.Cases(FuzzCase.Draw, FuzzCase.Ending, FuzzCase.Read), Journey.Of, one => one.Save());
        output.WriteLine($"{all} cases, {ran} of them with a run.");
        // A fuzz that only ever meets refusals, or none, tests nothing.
        Assert.True(all < FuzzRun.UsualCases || (ran > all / 10 && ran < all * 9 / 10), $"{ran} of {all} cases had a run");
    }

    [Fact]
    public void Mutated_files_of_the_open_standards_make_sound_files_or_findings_and_nothing_else()
    {
        (int all, int ran) = FuzzRun.Run(FuzzRun.Cases(OpenCase.Draw, OpenCase.Ending, OpenCase.Read), OpenJourney.Of, one => one.Save());
        output.WriteLine($"{all} documents, {ran} of which became files of ours.");
        Assert.True(all < FuzzRun.UsualCases || (ran > all / 10 && ran < all * 99 / 100), $"{ran} of {all} documents became files");
    }
}

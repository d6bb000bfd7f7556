using BenchmarkDotNet.Running;
using Gylebook.Benchmarks;

if (args is ["quantile-errors"])
{
    QuantileErrors.Print();
}
else if (args is ["coverage", var recipe])
{
    Coverage.Print(recipe);
}
else if (args is ["coverage-bent", var bent])
{
    Coverage.PrintBent(bent);
}
else if (args is ["simulate-gyles", var brewed, var folder])
{
    SimulatedGyles.Write(brewed, folder);
}
else if (args is ["one-malt", var malt])
{
    OneMalt.Print(malt);
}
else
{
    BenchmarkSwitcher.FromAssembly(typeof(ForecastBenchmarks).Assembly).Run(args);
}

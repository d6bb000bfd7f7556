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
else
{
    BenchmarkSwitcher.FromAssembly(typeof(ForecastBenchmarks).Assembly).Run(args);
}

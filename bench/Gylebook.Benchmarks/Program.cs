using BenchmarkDotNet.Running;
using Gylebook.Benchmarks;

BenchmarkSwitcher.FromAssembly(typeof(ForecastBenchmarks).Assembly).Run(args);

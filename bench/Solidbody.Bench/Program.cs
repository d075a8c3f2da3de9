using BenchmarkDotNet.Running;

BenchmarkSwitcher.FromAssembly(typeof(Solidbody.Bench.SweepKernelBench).Assembly).Run(args);

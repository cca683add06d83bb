using Purlin.Field.Tests.App;

[assembly: AssemblyFixture(typeof(Browser))]
[assembly: Xunit.v3.Parallelization(Mode = Xunit.Sdk.ParallelMode.Collections, MaxThreads = 2)]

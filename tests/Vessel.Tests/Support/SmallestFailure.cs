using FsCheck;
using FsCheck.Fluent;
using Microsoft.FSharp.Collections;
using Microsoft.FSharp.Core;
using Vessel.Design;

namespace Vessel.Tests.Support;

/// <summary>The smallest vessel that breaks a law as one that was drawn does, as FsCheck shrinks it.</summary>
internal sealed class SmallestFailure : IRunner
{
    private VesselDesign? _smallest;

    public static VesselDesign Of(VesselDesign broken, Action<VesselDesign> law)
    {
        var runner = new SmallestFailure();
        Check.One(
            Config.Quick.WithMaxTest(1).WithRunner(runner),
            Prop.ForAll(Arb.From(Gen.Constant(broken), DesignShrinker.Smaller), law));
        return runner._smallest ?? throw new InvalidOperationException("The law that was broken holds when it is asked once more.");
    }

    public void OnFinished(string name, TestResult result)
    {
        if (result is TestResult.Failed failed)
            _smallest = (VesselDesign)failed.Item3.Single();
    }

    public void OnStartFixture(Type type)
    {
    }

    public void OnArguments(int count, FSharpList<object> arguments, FSharpFunc<int, FSharpFunc<FSharpList<object>, string>> told)
    {
    }

    public void OnShrink(FSharpList<object> arguments, FSharpFunc<FSharpList<object>, string> told)
    {
    }
}

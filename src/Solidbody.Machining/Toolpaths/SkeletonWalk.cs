using Solidbody.Geometry;

namespace Solidbody.Machining.Toolpaths;

/// <summary>A way over a skeleton: the shortest path from its root to every place, short branches before long ones, mere stubs last.</summary>
internal sealed class SkeletonWalk
{
    private readonly List<int>[] onward;

    private SkeletonWalk(int root, List<int>[] onward) => (Root, this.onward) = (root, onward);

    public int Root { get; }
    /// <summary>Places after this one, the last to be visited first: a stack takes them from its end.</summary>
    public IReadOnlyList<int> Onward(int place) => onward[place];

    public static SkeletonWalk From(MedialAxis axis, int root, double stub)
    {
        var count = axis.Discs.Length;
        var (length, before, settled) = (new double[count], new int[count], new List<int>(count));
        var done = new bool[count];
        Array.Fill(length, double.PositiveInfinity);
        length[root] = 0;
        before[root] = -1;
        var open = new PriorityQueue<int, (double, int)>();
        open.Enqueue(root, (0, root));
        while (open.TryDequeue(out var i, out _))
        {
            if (done[i]) continue;
            done[i] = true;
            settled.Add(i);
            foreach (var k in axis.Neighbours(i))
            {
                var along = length[i] + axis.Discs[i].Centre.DistanceTo(axis.Discs[k].Centre);
                if (along >= length[k]) continue;
                (length[k], before[k]) = (along, i);
                open.Enqueue(k, (along, k));
            }
        }
        var reach = new double[count];
        var onward = new List<int>[count];
        for (var i = 0; i < count; i++) onward[i] = [];
        foreach (var i in Enumerable.Reverse(settled))
        {
            bool IsStub(int branch) => reach[branch] - length[i] < stub;
            onward[i].Sort((a, b) => IsStub(a) != IsStub(b) ? IsStub(b).CompareTo(IsStub(a)) : reach[a] != reach[b] ? reach[b].CompareTo(reach[a]) : b.CompareTo(a));
            reach[i] = Math.Max(reach[i], length[i]);
            if (before[i] < 0) continue;
            onward[before[i]].Add(i);
            reach[before[i]] = Math.Max(reach[before[i]], reach[i]);
        }
        return new(root, onward);
    }
}

namespace Nestmark.Bench.Garments;

/// <summary>Looks at the managed heap every 20 ms and keeps the greatest size seen.</summary>
internal sealed class HeapWatch : IDisposable
{
    private readonly Timer _timer;
    private long _most;

    public HeapWatch() => _timer = new Timer(_ => Look(), null, 0, 20);

    /// <summary>Greatest size so far, garbage included.</summary>
    public double Megabytes
    {
        get
        {
            Look();
            return Interlocked.Read(ref _most) / 1e6;
        }
    }

    public void Dispose() => _timer.Dispose();

    private void Look()
    {
        long now = GC.GetTotalMemory(false);
        long before = Interlocked.Read(ref _most);
        while (now > before)
        {
            long seen = Interlocked.CompareExchange(ref _most, now, before);
            if (seen == before)
                return;
            before = seen;
        }
    }
}

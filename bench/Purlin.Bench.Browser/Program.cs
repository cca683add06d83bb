using Microsoft.AspNetCore.Components.WebAssembly.Hosting;

// Nothing is drawn: the page only lets the measuring side call Acts.
await WebAssemblyHostBuilder.CreateDefault(args).Build().RunAsync();

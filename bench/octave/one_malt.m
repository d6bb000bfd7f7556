% The brew of docs/science/one-malt-by-hand.md for 4,000 draws, all draws at once: mash, lift, boil, yeast, racking, headlines and their bands.
%   octave --no-gui --quiet bench/octave/one_malt.m
% First the brew at its middles, to be held against the page; then the best and the median of fifty times. Equations and constants: that page.
1;

function v = water_curve(p) % kg/m3 above water, NBS C440 table 109
  v = p .* (3.862771151790262 + p .* (0.01176078176156205 + p .* (0.0001181052862740832 - 1.1210786571679939e-06 .* p)));
end

function g = gravity(p)
  g = 1 + water_curve(p) / (998.234 - 1.2);
end

function d = density(p) % kg/L
  d = (998.234 + water_curve(p)) / 1000;
end

function g = spirit(p) % alcohol in water, OIML R22 at 20 degrees
  a = [-39032.85426, 223446.0334, -547846.1354, 747017.2998, -613838.1234, 306287.4042, -88292.78388, 13522.15441, -1668.103923, 389.1238958, -192.9769495, 998.20123];
  g = (polyval(a, p) - 1.2) / (998.20123 - 1.2);
end

function [fermented, split] = split_of(limit) % of starch product, by a limit of attenuation in per cent, apparent; sugars 1 : 7 : 2
  real = limit / 100 / (1.220 + 0.012);
  share = real ./ (1 - 0.0051609 * 12 * (1 - real));
  fermented = (share - 0.1116) / 0.8184;
  parts = [0.1 * fermented, 0.7 * fermented, 0.2 * fermented, 1 - fermented] ./ [1.1111, 1.0556, 1.0370, 1.0111];
  split = parts ./ sum(parts, 2);
end

function out = brew(extract, moisture, conversion, held, evaporation, limit, triose, yeast_hold)
  malt = 5; liquor = 27; water = 0.998234;
  hydration = [1.1111, 1.0556, 1.0370, 1.0111];
  asSucrose = [0.9844; 0.9922; 1.0026; 1.0156];
  [~, congress] = split_of(82);
  made = sum(congress .* hydration);
  starch = 0.8184 / made;
  native = 0.07 + 0.1116 + starch;
  s = 0.04 * 0.7045 + 0.01 * 0.7045 + 0.02 * 1.6895 + 0.1116 + 0.8184 * (sum(congress .* hydration .* asSucrose', 2) / made);
  e = extract .* (1 - moisture); m = moisture;
  k = e .* (8 + m) ./ (s .* (8 + m + e) - e .* native);
  protein = malt * k * 0.04; coagulable = malt * k * 0.01; minerals = malt * k * 0.02; sucrose = malt * k * 0.1116; raw = malt * k * starch;
  grain = malt * (1 - moisture) - malt * k * native;
  % mash
  [~, split] = split_of(limit);
  sugars = raw .* (1 - (1 - conversion) / 0.8184) .* split .* hydration; % kg of each
  taken = sum(sugars, 2) - raw .* (1 - (1 - conversion) / 0.8184);
  w = liquor * water + malt * moisture - taken;
  mass = w + protein + coagulable + minerals + sucrose + sum(sugars, 2);
  equivalent = (protein + coagulable) * 0.7045 + minerals * 1.6895 + sucrose + sugars * asSucrose;
  plato = 100 * equivalent ./ (w + equivalent);
  % lift
  left = 1 - held .* grain ./ mass;
  copper = mass .* left ./ density(plato);
  % boil
  throw = 0.8 * coagulable .* left;
  wb = w .* left - evaporation * water;
  eb = equivalent .* left - throw * 0.7045;
  massb = wb + (mass - w) .* left - throw;
  pb = 100 * eb ./ (wb + eb);
  og = gravity(pb);
  knock = massb ./ density(pb);
  % yeast
  own = sucrose .* left; sug = sugars .* left;
  maltose = own + sug(:, 2) + 0.95 * sug(:, 1) + triose .* (1.0556 / 1.0370) .* sug(:, 3);
  ethanol = maltose / 2.0665; gas = 0.9565 * ethanol; cells = 0.11 * ethanol + 0.0115;
  massf = massb - gas - (cells - 0.0115);
  leftover = eb - own - sug(:, 1) * 0.9844 - sug(:, 2) * 0.9922 - triose .* sug(:, 3) * 1.0026;
  pf = 100 * leftover ./ massf;
  abw = 100 * ethanol ./ massf;
  fg = gravity(pf) + spirit(abw / 100) - 1;
  litres = massf ./ ((fg * (998.234 - 1.2) + 1.2) / 1000);
  abv = 100 * ethanol ./ 0.789239 ./ litres;
  % racking
  sludge = throw * 6 + cells .* yeast_hold;
  packaged = litres .* (1 - sludge ./ massf);
  out = [copper, knock, og, fg, abv, 100 * (og - fg) ./ (og - 1), packaged];
end

function bands = bands_of(out)
  sorted = sort(out);
  n = rows(sorted);
  bands = sorted(round([0.05, 0.5, 0.95] * n + 0.5), :);
end

function bands = drawn(n)
  z = randn(n, 8);
  bands = bands_of(brew(0.815 * (1 + 0.012 * z(:, 1)), 0.032 * exp(0.15 * z(:, 2)), 0.94 + 0.02 * z(:, 3), 5.418 * exp(0.2 * z(:, 4)), ...
    4 * exp(0.25 * z(:, 5)), 84.57 + 3 * z(:, 6), 1 ./ (1 + exp(-(0.7538 + 0.9 * z(:, 7)))), 6.5 * exp(0.18 * z(:, 8))));
end

middle = brew(0.815, 0.032, 0.94, 5.418, 4, 84.57, 0.68, 6.5);
printf("copper-up %.2f L, knock-out %.2f L, original gravity %.4f, final %.4f, %.2f %% vol, attenuation in points %.1f %%, packaged %.2f L\n", middle);
randn("state", 1);
drawn(4000);
times = zeros(50, 1);
for i = 1:50
  tic; drawn(4000); times(i) = toc;
end
printf("4000 draws with bands of 7 headlines: best %.2f ms, median %.2f ms\n", 1000 * min(times), 1000 * median(times));

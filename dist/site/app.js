var Cu={matrix:60,cell:60,question:60,snapshot:60,choose:60,line:60,spread:60,sweep:60,span:60,fitout:60,kit:300,catalogue:60};var H={version:"0.5.0",requests:{matrix:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},vswr:{nullable:!1,type:"number",min:1,max:20,default:1.5},cable:{nullable:!0,type:"text",longest:40,default:null},cable_diameter_m:{nullable:!0,unit:"m",type:"number",min:5e-4,max:.1,default:null},condition:{nullable:!1,type:"text",longest:40,default:"new"},added_resistance_ohm:{nullable:!1,unit:"Ω",type:"number",min:0,max:5,default:0},families:{nullable:!0,type:"list",items:{type:"text",longest:40},least:1,most:100,default:null},bands:{nullable:!0,type:"list",items:{type:"text",longest:40},least:0,most:100,default:null},frequencies_hz:{nullable:!1,type:"list",items:{unit:"Hz",type:"number",min:1e5,max:5e10},least:0,most:200,default:[]},powers_w:{nullable:!1,type:"list",items:{unit:"W",type:"number",min:0,max:1e5},least:1,most:24,default:[0,5,50,100,400,1500]}},cell:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},vswr:{nullable:!1,type:"number",min:1,max:20,default:1.5},cable:{nullable:!0,type:"text",longest:40,default:null},cable_diameter_m:{nullable:!0,unit:"m",type:"number",min:5e-4,max:.1,default:null},condition:{nullable:!1,type:"text",longest:40,default:"new"},added_resistance_ohm:{nullable:!1,unit:"Ω",type:"number",min:0,max:5,default:0},family:{nullable:!1,type:"text",longest:40,default:null},band:{nullable:!0,type:"text",longest:40,default:null},frequency_hz:{nullable:!0,unit:"Hz",type:"number",min:1e5,max:5e10,default:null},power_w:{nullable:!1,unit:"W",type:"number",min:0,max:1e5,default:100}},question:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},vswr:{nullable:!1,type:"number",min:1,max:20,default:1.5},cable:{nullable:!0,type:"text",longest:40,default:null},cable_diameter_m:{nullable:!0,unit:"m",type:"number",min:5e-4,max:.1,default:null},condition:{nullable:!1,type:"text",longest:40,default:"new"},added_resistance_ohm:{nullable:!1,unit:"Ω",type:"number",min:0,max:5,default:0},text:{nullable:!1,type:"text",longest:300,default:""},family:{nullable:!0,type:"text",longest:40,default:null},band:{nullable:!0,type:"text",longest:40,default:null},frequency_hz:{nullable:!0,unit:"Hz",type:"number",min:1e5,max:5e10,default:null},power_w:{nullable:!1,unit:"W",type:"number",min:0,max:1e5,default:100}},snapshot:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},vswr:{nullable:!1,type:"number",min:1,max:20,default:1.5},cable:{nullable:!0,type:"text",longest:40,default:null},cable_diameter_m:{nullable:!0,unit:"m",type:"number",min:5e-4,max:.1,default:null},condition:{nullable:!1,type:"text",longest:40,default:"new"},added_resistance_ohm:{nullable:!1,unit:"Ω",type:"number",min:0,max:5,default:0},families:{nullable:!0,type:"list",items:{type:"text",longest:40},least:1,most:100,default:null},bands:{nullable:!0,type:"list",items:{type:"text",longest:40},least:0,most:100,default:null},frequencies_hz:{nullable:!1,type:"list",items:{unit:"Hz",type:"number",min:1e5,max:5e10},least:0,most:200,default:[]},powers_w:{nullable:!1,type:"list",items:{unit:"W",type:"number",min:0,max:1e5},least:1,most:24,default:[0,5,50,100,400,1500]},power_w:{nullable:!1,unit:"W",type:"number",min:0,max:1e5,default:100}},choose:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},vswr:{nullable:!1,type:"number",min:1,max:20,default:1.5},cable:{nullable:!0,type:"text",longest:40,default:null},cable_diameter_m:{nullable:!0,unit:"m",type:"number",min:5e-4,max:.1,default:null},condition:{nullable:!1,type:"text",longest:40,default:"new"},added_resistance_ohm:{nullable:!1,unit:"Ω",type:"number",min:0,max:5,default:0},use:{nullable:!1,type:"choice",choices:["receive","transmit"],default:"transmit"},bands:{nullable:!1,type:"list",items:{type:"text",longest:40},least:0,most:100,default:["20m"]},frequencies_hz:{nullable:!1,type:"list",items:{unit:"Hz",type:"number",min:1e5,max:5e10},least:0,most:200,default:[]},power_w:{nullable:!1,unit:"W",type:"number",min:0,max:1e5,default:100},margin_asked_db:{nullable:!1,unit:"dB",type:"number",min:0,max:20,default:3},dc_current_a:{nullable:!1,unit:"A",type:"number",min:0,max:50,default:0},dc_voltage_v:{nullable:!1,unit:"V",type:"number",min:0,max:100,default:12},installation:{nullable:!1,type:"text",longest:40,default:"fixed"},port:{nullable:!0,type:"text",longest:40,default:null},largest_diameter_m:{nullable:!0,unit:"m",type:"number",min:5e-4,max:.1,default:null},plan:{nullable:!0,type:"text",longest:40,default:null}},line:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},elements:{nullable:!1,type:"list",items:{},least:1,most:60,default:null},load:{nullable:!1,default:null},power_w:{nullable:!1,unit:"W",type:"number",min:0,max:1e5,default:100},transmitter:{nullable:!1,default:{behaviour:"transceiver",holds_to_vswr:null}},band:{nullable:!0,type:"text",longest:40,default:null},frequency_hz:{nullable:!0,unit:"Hz",type:"number",min:1e5,max:5e10,default:null},receiver:{nullable:!1,default:{noise_figure_db:6,environment:"rural",antenna_view:"horizon",elevation_deg:30,antenna_temperature_k:null,preamplifier:null}},explain:{nullable:!0,type:"number",min:0,max:59,default:null}},spread:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},elements:{nullable:!1,type:"list",items:{},least:1,most:60,default:null},load:{nullable:!1,default:null},power_w:{nullable:!1,unit:"W",type:"number",min:0,max:1e5,default:100},transmitter:{nullable:!1,default:{behaviour:"transceiver",holds_to_vswr:null}},band:{nullable:!0,type:"text",longest:40,default:null},frequency_hz:{nullable:!0,unit:"Hz",type:"number",min:1e5,max:5e10,default:null},draws:{nullable:!1,type:"number",min:100,max:1e5,default:1e4},seed:{nullable:!1,type:"number",min:0,max:4294967295,default:1},length_tolerance:{nullable:!1,type:"number",min:0,max:.5,default:.02}},sweep:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},elements:{nullable:!1,type:"list",items:{},least:0,most:16,default:null},load:{nullable:!0,default:null},touchstone:{nullable:!1,type:"text",longest:3e6,default:null},earlier:{nullable:!0,type:"text",longest:3e6,default:null},velocity_factor:{nullable:!1,type:"number",min:.3,max:1,default:.66},length_tolerance:{nullable:!1,type:"number",min:.001,max:.1,default:.02},window_shape:{nullable:!0,type:"number",min:.5,max:14,default:null}},span:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},elements:{nullable:!1,type:"list",items:{},least:0,most:16,default:[]},length_m:{nullable:!1,unit:"m",type:"number",min:.01,max:1e4,default:30},velocity_factor:{nullable:!1,unit:"1",type:"number",min:.3,max:1,default:.66},lowest_hz:{nullable:!1,unit:"Hz",type:"number",min:1e5,max:5e10,default:1e6},highest_hz:{nullable:!1,unit:"Hz",type:"number",min:1e5,max:5e10,default:9e8},most_points:{nullable:!1,type:"number",min:16,max:10001,default:201}},fitout:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},elements:{nullable:!1,type:"list",items:{},least:1,most:60,default:null},station:{nullable:!1,type:"text",longest:60,default:""},date:{nullable:!1,type:"text",longest:10,default:""},power_w:{nullable:!1,unit:"W",type:"number",min:0,max:1e5,default:100},band:{nullable:!0,type:"text",longest:40,default:null},frequency_hz:{nullable:!0,unit:"Hz",type:"number",min:1e5,max:5e10,default:null}},kit:{region:{nullable:!1,type:"number",min:1,max:3,default:1},mode:{nullable:!1,type:"text",longest:40,default:"ssb"},power_is:{nullable:!1,type:"choice",choices:["forward","net"],default:"forward"},transmit_share:{nullable:!0,type:"number",min:.001,max:1,default:null},on_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},off_time_s:{nullable:!0,unit:"s",type:"number",min:.01,max:86400,default:null},system_impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:25,max:150,default:50},return_loss_asked_db:{nullable:!1,unit:"dB",type:"number",min:6,max:40,default:14},ambient_temperature_c:{nullable:!1,unit:"°C",type:"number",min:-60,max:80,default:40},solar_irradiance_w_per_m2:{nullable:!1,unit:"W/m²",type:"number",min:0,max:1400,default:0},altitude_m:{nullable:!1,unit:"m",type:"number",min:0,max:3e4,default:0},exposure:{nullable:!1,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:"indoor"},added_sealing:{nullable:!1,type:"boolean",default:!1},vibration:{nullable:!1,type:"choice",choices:["none","severe","vehicle"],default:"none"},matings_per_year:{nullable:!1,type:"number",min:0,max:1e4,default:5},service_life_years:{nullable:!1,unit:"years",type:"number",min:.1,max:100,default:10},vswr:{nullable:!1,type:"number",min:1,max:20,default:1.5},cable:{nullable:!0,type:"text",longest:40,default:null},cable_diameter_m:{nullable:!0,unit:"m",type:"number",min:5e-4,max:.1,default:null},condition:{nullable:!1,type:"text",longest:40,default:"new"},added_resistance_ohm:{nullable:!1,unit:"Ω",type:"number",min:0,max:5,default:0},ports:{nullable:!1,type:"list",items:{},least:2,most:60,default:null},pairs:{nullable:!0,type:"list",items:{type:"list",items:{type:"number",min:0,max:59},least:2,most:2},least:0,most:400,default:null},owned:{nullable:!1,type:"list",items:{},least:0,most:200,default:[]},goal:{nullable:!1,type:"choice",choices:["best_joints","fewest"],default:"fewest"},most_in_series:{nullable:!1,type:"number",min:1,max:4,default:2},most_loss_db:{nullable:!1,unit:"dB",type:"number",min:.01,max:20,default:.5},impedance_steps:{nullable:!1,type:"boolean",default:!1},search:{nullable:!1,type:"choice",choices:["quick","thorough"],default:"quick"}},catalogue:{entry:{nullable:!0,type:"text",longest:40,default:null},cable:{nullable:!0,type:"text",longest:40,default:null}}},parts:{CableRun:{cable:{nullable:!1,type:"text",longest:40,default:null},length_m:{nullable:!1,unit:"m",type:"number",min:.01,max:1e4,default:null},name:{nullable:!1,type:"text",longest:60,default:""}},DummyLoad:{vswr:{nullable:!1,type:"number",min:1,max:20,default:1.1},power_limit_w:{nullable:!0,unit:"W",type:"number",min:.001,max:1e6,default:null}},GivenImpedance:{resistance_ohm:{nullable:!1,unit:"Ω",type:"number",min:0,max:1e6,default:null},reactance_ohm:{nullable:!1,unit:"Ω",type:"number",min:-1e6,max:1e6,default:0}},GivenVswr:{vswr:{nullable:!1,type:"number",min:1,max:100,default:null},angle_deg:{nullable:!0,unit:"°",type:"number",min:-360,max:360,default:null}},ImpedancePoint:{frequency_hz:{nullable:!1,unit:"Hz",type:"number",min:1e5,max:5e10,default:null},resistance_ohm:{nullable:!1,unit:"Ω",type:"number",min:0,max:1e6,default:null},reactance_ohm:{nullable:!1,unit:"Ω",type:"number",min:-1e6,max:1e6,default:0}},ImpedanceTable:{points:{nullable:!1,type:"list",items:{},least:2,most:2e3,default:null}},Joint:{family:{nullable:!1,type:"text",longest:40,default:null},adapter_to:{nullable:!0,type:"text",longest:40,default:null},condition:{nullable:!1,type:"text",longest:40,default:"new"},added_resistance_ohm:{nullable:!1,unit:"Ω",type:"number",min:0,max:5,default:0},exposure:{nullable:!0,type:"choice",choices:["exposed","immersed","indoor","sheltered"],default:null},name:{nullable:!1,type:"text",longest:60,default:""}},KnownEnd:{what:{nullable:!1,type:"choice",choices:["matched","open","short"],default:null}},MeasuredLoad:{touchstone:{nullable:!1,type:"text",longest:3e6,default:null}},MeasuredPart:{touchstone:{nullable:!1,type:"text",longest:3e6,default:null},power_limit_w:{nullable:!0,unit:"W",type:"number",min:.001,max:1e6,default:null},voltage_limit_v:{nullable:!0,unit:"V",type:"number",min:1,max:1e6,default:null},name:{nullable:!1,type:"text",longest:60,default:""}},OwnedAdapter:{one_family:{nullable:!1,type:"text",longest:40,default:null},one_gender:{nullable:!1,type:"choice",choices:["jack","plug"],default:null},other_family:{nullable:!1,type:"text",longest:40,default:null},other_gender:{nullable:!1,type:"choice",choices:["jack","plug"],default:null},count:{nullable:!1,type:"number",min:1,max:20,default:1}},Part:{what:{nullable:!1,type:"choice",choices:["arrester","attenuator","divider","filter","meter","other","switch"],default:"other"},loss_db:{nullable:!1,unit:"dB",type:"number",min:0,max:100,default:null},vswr:{nullable:!1,type:"number",min:1,max:20,default:1},power_limit_w:{nullable:!0,unit:"W",type:"number",min:.001,max:1e6,default:null},voltage_limit_v:{nullable:!0,unit:"V",type:"number",min:1,max:1e6,default:null},directivity_db:{nullable:!0,unit:"dB",type:"number",min:0,max:80,default:null},name:{nullable:!1,type:"text",longest:60,default:""}},Port:{family:{nullable:!1,type:"text",longest:40,default:null},gender:{nullable:!1,type:"choice",choices:["jack","plug"],default:null},highest_frequency_hz:{nullable:!1,unit:"Hz",type:"number",min:1e5,max:5e10,default:null},power_w:{nullable:!1,unit:"W",type:"number",min:0,max:1e5,default:100},impedance_ohm:{nullable:!0,unit:"Ω",type:"number",min:25,max:150,default:null},name:{nullable:!1,type:"text",longest:60,default:""}},Preamplifier:{before_element:{nullable:!1,type:"number",min:0,max:59,default:null},gain_db:{nullable:!1,unit:"dB",type:"number",min:0,max:60,default:15},noise_figure_db:{nullable:!1,unit:"dB",type:"number",min:0,max:60,default:1}},Receiver:{noise_figure_db:{nullable:!1,unit:"dB",type:"number",min:0,max:60,default:6},environment:{nullable:!1,type:"text",longest:40,default:"rural"},antenna_view:{nullable:!1,type:"text",longest:40,default:"horizon"},elevation_deg:{nullable:!1,unit:"°",type:"number",min:0,max:90,default:30},antenna_temperature_k:{nullable:!0,unit:"K",type:"number",min:1,max:1e9,default:null},preamplifier:{nullable:!0,default:null}},ResonantAntenna:{resonance_hz:{nullable:!1,unit:"Hz",type:"number",min:1e5,max:5e10,default:null},vswr:{nullable:!1,type:"number",min:1,max:20,default:1.2},bandwidth_hz:{nullable:!1,unit:"Hz",type:"number",min:100,max:1e10,default:null},bandwidth_vswr:{nullable:!1,type:"number",min:1.01,max:20,default:2}},Section:{impedance_ohm:{nullable:!1,unit:"Ω",type:"number",min:10,max:1e3,default:null},length_m:{nullable:!1,unit:"m",type:"number",min:.01,max:1e4,default:null},velocity_factor:{nullable:!1,type:"number",min:.2,max:1,default:1},loss_db:{nullable:!1,unit:"dB",type:"number",min:0,max:100,default:0},voltage_limit_v:{nullable:!0,unit:"V",type:"number",min:1,max:1e6,default:null},name:{nullable:!1,type:"text",longest:60,default:""}},Transformer:{ratio:{nullable:!1,type:"number",min:.01,max:100,default:1},loss_db:{nullable:!1,unit:"dB",type:"number",min:0,max:100,default:.2},choking_ohm:{nullable:!0,unit:"Ω",type:"number",min:1,max:1e6,default:null},power_limit_w:{nullable:!0,unit:"W",type:"number",min:.001,max:1e6,default:null},voltage_limit_v:{nullable:!0,unit:"V",type:"number",min:1,max:1e6,default:null},name:{nullable:!1,type:"text",longest:60,default:""}},Transmitter:{behaviour:{nullable:!1,type:"text",longest:40,default:"transceiver"},holds_to_vswr:{nullable:!0,type:"number",min:1.01,max:100,default:null}},Tuner:{network:{nullable:!1,type:"choice",choices:["l","pi","t"],default:"t"},coil_q:{nullable:!1,type:"number",min:5,max:1e4,default:100},capacitor_q:{nullable:!1,type:"number",min:5,max:1e5,default:1e3},largest_capacitor_f:{nullable:!0,unit:"F",type:"number",min:1e-12,max:1e-7,default:null},largest_coil_h:{nullable:!1,unit:"H",type:"number",min:1e-9,max:.001,default:3e-5},voltage_limit_v:{nullable:!0,unit:"V",type:"number",min:1,max:1e6,default:null},current_limit_a:{nullable:!0,unit:"A",type:"number",min:.001,max:1e4,default:null},name:{nullable:!1,type:"text",longest:60,default:""}},WireRun:{line:{nullable:!1,type:"text",longest:40,default:null},length_m:{nullable:!1,unit:"m",type:"number",min:.01,max:1e4,default:null},name:{nullable:!1,type:"text",longest:60,default:""}}},bands:[{id:"2200m",name:"2200 m",regions:["1","2","3"]},{id:"630m",name:"630 m",regions:["1","2","3"]},{id:"160m",name:"160 m",regions:["1","2","3"]},{id:"80m",name:"80 m",regions:["1","2","3"]},{id:"60m",name:"60 m",regions:["1","2","3"]},{id:"40m",name:"40 m",regions:["1","2","3"]},{id:"30m",name:"30 m",regions:["1","2","3"]},{id:"20m",name:"20 m",regions:["1","2","3"]},{id:"17m",name:"17 m",regions:["1","2","3"]},{id:"15m",name:"15 m",regions:["1","2","3"]},{id:"12m",name:"12 m",regions:["1","2","3"]},{id:"10m",name:"10 m",regions:["1","2","3"]},{id:"6m",name:"6 m",regions:["1","2","3"]},{id:"4m",name:"4 m",regions:["1"]},{id:"2m",name:"2 m",regions:["1","2","3"]},{id:"1_25m",name:"1.25 m",regions:["2"]},{id:"70cm",name:"70 cm",regions:["1","2","3"]},{id:"33cm",name:"33 cm",regions:["2"]},{id:"23cm",name:"23 cm",regions:["1","2","3"]},{id:"13cm",name:"13 cm",regions:["1","2","3"]},{id:"9cm",name:"9 cm",regions:["1","2","3"]},{id:"5cm",name:"5 cm",regions:["1","2","3"]},{id:"3cm",name:"3 cm",regions:["1","2","3"]},{id:"1_2cm",name:"1.2 cm",regions:["1","2","3"]},{id:"6mm",name:"6 mm",regions:["1","2","3"]}],families:[{id:"uhf",name:"UHF",also_called:["PL-259 / SO-239"]},{id:"mini_uhf",name:"Mini-UHF",also_called:["Miniature UHF"]},{id:"bnc",name:"BNC",also_called:["BNC 50 Ω"]},{id:"bnc_75",name:"BNC 75 Ω",also_called:["75 Ω BNC"]},{id:"tnc",name:"TNC",also_called:["Threaded BNC"]},{id:"n",name:"N",also_called:["Type N"]},{id:"n_75",name:"N 75 Ω",also_called:["75 Ω type N"]},{id:"c",name:"C",also_called:["Type C"]},{id:"hn",name:"HN",also_called:["High-voltage N"]},{id:"7_16",name:"7/16",also_called:["7-16 DIN"]},{id:"4_3_10",name:"4.3-10",also_called:[]},{id:"sma",name:"SMA",also_called:["Subminiature A"]},{id:"rp_sma",name:"RP-SMA",also_called:["Reverse polarity SMA"]},{id:"smb",name:"SMB",also_called:["Subminiature B"]},{id:"mcx",name:"MCX",also_called:["Micro coaxial"]},{id:"mmcx",name:"MMCX",also_called:["Micro-miniature coaxial"]},{id:"f",name:"F",also_called:["F type"]},{id:"3_5mm",name:"3.5 mm",also_called:[]},{id:"2_92mm",name:"2.92 mm",also_called:[]}],modes:[{id:"ssb",name:"SSB, conversation",duty_factor:{value:.2,source:"fcc_oet_65b",kind:"handbook",note:"no speech processing"},on_time_s:null,off_time_s:null,note:"",typed_as:["SSB","USB","LSB","sideband","single sideband","phone","voice","SSB voice"]},{id:"ssb_processed",name:"SSB, processed",duty_factor:{value:.5,source:"fcc_oet_65b",kind:"handbook",note:"heavy speech processing; a later list gives 0.4"},on_time_s:null,off_time_s:null,note:"",typed_as:["processed SSB","compressed SSB","SSB with compression","SSB with processing","SSB with a processor","contest SSB"]},{id:"cw",name:"CW, conversation",duty_factor:{value:.4,source:"fcc_oet_65b",kind:"handbook",note:""},on_time_s:null,off_time_s:null,note:"",typed_as:["CW","Morse","Morse code","telegraphy"]},{id:"cw_eme",name:"CW, EME",duty_factor:{value:.44,source:"mode_comparison",kind:"handbook",note:"the word PARIS over and over, 22 of 50 dots with the key down"},on_time_s:{value:150,source:"eme_handbook_1988",kind:"handbook",note:"twelve periods to the half hour"},off_time_s:{value:150,source:"eme_handbook_1988",kind:"handbook",note:"the other station's period"},note:"Sends without a break for every other period of 2.5 min, the custom on 432 MHz and above; 2 min on 144 MHz heats no more.",typed_as:["CW EME","EME CW"]},{id:"fm",name:"FM voice",duty_factor:{value:1,source:"fcc_oet_65b",kind:"handbook",note:""},on_time_s:null,off_time_s:null,note:"",typed_as:["FM","NBFM","NFM","FM repeater"]},{id:"dmr",name:"DMR, one time slot",duty_factor:{value:.5,source:"etsi_ts_102_361",kind:"handbook",note:"one slot of 30 ms in two, constant envelope in it; the burst itself, 27.5 ms, would make it 0.46"},on_time_s:null,off_time_s:null,note:"What a handheld or mobile sends. A repeater sends both slots: take FM voice for it.",typed_as:["DMR"]},{id:"am",name:"AM voice (PEP is 4 × carrier)",duty_factor:{value:.375,source:"am_article_2002",kind:"handbook",note:"full modulation by a sine, (1 + 1/2)/4: voice lies between it and 0.25, the carrier alone; one exposure list prints 1.0 without saying of which power"},on_time_s:null,off_time_s:null,note:"With the power given as peak envelope power; 100 W for a carrier of 25 W.",typed_as:["AM"]},{id:"rtty",name:"RTTY, FSK or AFSK",duty_factor:{value:1,source:"fcc_oet_65b",kind:"handbook",note:""},on_time_s:null,off_time_s:null,note:"",typed_as:["RTTY","FSK","AFSK","teletype"]},{id:"psk31",name:"PSK31",duty_factor:{value:.75,source:"mode_comparison",kind:"handbook",note:"as many ones as zeros; 0.5 while idle, two tones"},on_time_s:null,off_time_s:null,note:"",typed_as:["PSK31","PSK","BPSK31"]},{id:"ft8",name:"FT8",duty_factor:{value:1,source:"weak_signal_guide",kind:"handbook",note:"constant envelope while keyed; chapter Protocols, overview"},on_time_s:{value:12.64,source:"weak_signal_guide",kind:"handbook",note:"79 symbols at 6.25 baud"},off_time_s:{value:17.36,source:"weak_signal_guide",kind:"handbook",note:"two sequences less one transmission: the stations take turns"},note:"Sends in every other 15 s sequence: 12.64 s on, 17.36 s off, 42 % of the time.",typed_as:["FT8"]},{id:"ft4",name:"FT4",duty_factor:{value:1,source:"weak_signal_guide",kind:"handbook",note:"constant envelope while keyed; chapter Protocols, overview"},on_time_s:{value:5.04,source:"weak_signal_guide",kind:"handbook",note:"chapter Protocols, Table 7"},off_time_s:{value:9.96,source:"weak_signal_guide",kind:"handbook",note:"two sequences less one transmission: the stations take turns"},note:"Sends in every other 7.5 s sequence: 5.04 s on, 9.96 s off, 34 % of the time.",typed_as:["FT4"]},{id:"jt65",name:"JT65, EME",duty_factor:{value:1,source:"weak_signal_guide",kind:"handbook",note:"constant envelope while keyed; chapter Protocols, overview"},on_time_s:{value:46.8,source:"weak_signal_guide",kind:"handbook",note:"chapter Protocols, Table 7"},off_time_s:{value:73.2,source:"weak_signal_guide",kind:"handbook",note:"two sequences less one transmission: the stations take turns"},note:"Sends in every other minute: 46.8 s on, 73.2 s off, 39 % of the time. JT4 and JT9 are within 3 s of it.",typed_as:["JT65","JT9","JT4"]},{id:"q65_60",name:"Q65-60, EME",duty_factor:{value:1,source:"weak_signal_guide",kind:"handbook",note:"constant envelope while keyed; chapter Protocols, overview"},on_time_s:{value:51,source:"weak_signal_guide",kind:"handbook",note:"chapter Protocols, Table 7"},off_time_s:{value:69,source:"weak_signal_guide",kind:"handbook",note:"two sequences less one transmission: the stations take turns"},note:"Sends in every other minute: 51 s on, 69 s off, 43 % of the time. Q65-30 sends the same share in shorter overs.",typed_as:["Q65-60","Q65"]},{id:"q65_300",name:"Q65-300",duty_factor:{value:1,source:"weak_signal_guide",kind:"handbook",note:"constant envelope while keyed; chapter Protocols, overview"},on_time_s:{value:293.8,source:"weak_signal_guide",kind:"handbook",note:"chapter Protocols, Table 7"},off_time_s:{value:306.2,source:"weak_signal_guide",kind:"handbook",note:"two sequences less one transmission: the stations take turns"},note:"Sends in every other five minutes, the hardest rhythm of Q65: 293.8 s on, 306.2 s off, 49 % of the time.",typed_as:["Q65-300"]},{id:"msk144",name:"MSK144",duty_factor:{value:1,source:"weak_signal_guide",kind:"handbook",note:"constant envelope while keyed; chapter Protocols, overview"},on_time_s:{value:30,source:"weak_signal_guide",kind:"handbook",note:"frames without gaps through the sequence; chapter on VHF features: 15 s or 30 s by local custom"},off_time_s:{value:30,source:"weak_signal_guide",kind:"handbook",note:"the other station's sequence"},note:"Sends in every other 30 s sequence; 15 s, also customary, heat no more.",typed_as:["MSK144","MSK"]},{id:"wspr",name:"WSPR",duty_factor:{value:1,source:"weak_signal_guide",kind:"handbook",note:"constant envelope while keyed; chapter Protocols, overview"},on_time_s:{value:110.6,source:"weak_signal_guide",kind:"handbook",note:"chapter Protocols, Table 7"},off_time_s:{value:129.4,source:"common_practice",kind:"common practice",note:"rest of two sequences of 120 s; most beacons send less often"},note:"Sends in every other two-minute sequence, the hardest usual beacon rhythm.",typed_as:["WSPR"]},{id:"sstv",name:"SSTV",duty_factor:{value:1,source:"sstv_chapter_2012",kind:"handbook",note:"follows from the tone plan, one tone at a time: 1200 Hz for sync, 1500 to 2300 Hz for the picture"},on_time_s:null,off_time_s:null,note:"Analogue pictures; one lasts from 36 s (Robot 36) to four and a half minutes (Scottie DX).",typed_as:["SSTV","slow scan","slow-scan TV"]},{id:"carrier",name:"Carrier (tune-up)",duty_factor:{value:1,source:"fcc_oet_65b",kind:"handbook",note:""},on_time_s:null,off_time_s:null,note:"",typed_as:["key down","keydown","carrier","continuous carrier","tune","tune up","tuning","tuning up","steady carrier"]}],conditions:[{id:"new",name:"New and clean",added_resistance_ohm:{value:0,source:"common_practice",kind:"common practice",note:""},typed_as:["new","clean","like new","brand new","good condition"]},{id:"worn",name:"Worn",added_resistance_ohm:{value:.002,source:"mil_prf_39012_slash_sheets",kind:"memory",note:"the greatest growth the sheets allow after conditioning is 0.5 to 2 mΩ, by family"},typed_as:["worn","worn out","well worn"]},{id:"corroded",name:"Corroded",added_resistance_ohm:{value:.05,source:"common_practice",kind:"common practice",note:"a joint that has taken water or lost its plating; single cases are far worse"},typed_as:["corroded","rusty","oxidised","oxidized","green","tarnished"]}],cautions:["A margin is an estimate; the data of your own part, your local codes and your licence come first.","RF burns: never touch or open a joint with power on it. Key down only when everybody is clear.","RF exposure: keep within the exposure limits of your country; work them out before transmitting.","High voltage and mains: switch off, unplug and discharge before you open an amplifier, a tuner or a feed point.","Lightning: bond and earth by your local code, fit arresters, and never work on a line when storms are near.","Heights and masts: trained people, proper gear, never alone and never near power lines."],cables:[{id:"rg_174",name:"RG-174"},{id:"rg_58",name:"RG-58"},{id:"foam_5_mm",name:"Foam 4.95 mm, 200 size"},{id:"rg_223",name:"RG-223"},{id:"rg_213",name:"RG-213"},{id:"rg_8",name:"RG-8 foam"},{id:"rg_214",name:"RG-214"},{id:"rg_217",name:"RG-217"},{id:"rg_8x",name:"RG-8X"},{id:"foam_6_mm",name:"Foam 6.1 mm, 240 size"},{id:"foam_7_mm",name:"Foam 7.3 mm"},{id:"foam_10_mm",name:"Foam 10.3 mm, 400 size"},{id:"foam_10_mm_stranded",name:"Foam 10.2 mm, stranded"},{id:"foam_15_mm",name:"Foam 15 mm, 600 size"},{id:"corrugated_1_2",name:"Corrugated foam 1/2 in"},{id:"corrugated_7_8",name:"Corrugated foam 7/8 in"},{id:"rg_178",name:"RG-178"},{id:"rg_188",name:"RG-188"},{id:"rg_316",name:"RG-316"},{id:"rg_303",name:"RG-303"},{id:"rg_142",name:"RG-142"},{id:"rg_400",name:"RG-400"},{id:"rg_393",name:"RG-393"},{id:"rg_405",name:"RG-405"},{id:"rg_402",name:"RG-402"},{id:"rg_59",name:"RG-59"},{id:"rg_6",name:"RG-6"},{id:"rg_11",name:"RG-11"}],wire_lines:[{id:"window_450_solid",name:"450-class window line, 1.0 mm solid"},{id:"window_450_stranded",name:"450-class window line, 1.0 mm stranded"},{id:"window_450_heavy",name:"450-class window line, 1.6 mm stranded"},{id:"window_300",name:"300-class window line"},{id:"ribbon_300",name:"300 Ω ribbon"},{id:"open_wire_600",name:"600 Ω open wire, 2 mm copper"}],installations:[{id:"fixed",name:"Indoors",exposure:"indoor",vibration:"none",added_sealing:!1},{id:"sheltered",name:"Outdoors, sheltered",exposure:"sheltered",vibration:"none",added_sealing:!1},{id:"outdoors",name:"Outdoors, in the weather",exposure:"exposed",vibration:"none",added_sealing:!1},{id:"mast",name:"Mast or tower",exposure:"exposed",vibration:"vehicle",added_sealing:!1},{id:"mast_taped",name:"Mast or tower, joints taped",exposure:"exposed",vibration:"vehicle",added_sealing:!0},{id:"vehicle",name:"Vehicle, inside",exposure:"indoor",vibration:"vehicle",added_sealing:!1},{id:"vehicle_outside",name:"Vehicle, outside",exposure:"exposed",vibration:"vehicle",added_sealing:!1},{id:"portable",name:"Portable, in the field",exposure:"sheltered",vibration:"none",added_sealing:!1},{id:"handheld",name:"Hand-held",exposure:"sheltered",vibration:"vehicle",added_sealing:!1}],noise_environments:[{id:"city",name:"City"},{id:"residential",name:"Residential"},{id:"rural",name:"Rural"},{id:"quiet_rural",name:"Quiet rural"},{id:"galactic",name:"Galactic"}],transmitters:[{id:"transceiver",name:"Transceiver, folds back",holds_to_vswr:2},{id:"solid_state_amplifier",name:"Transistor amplifier, folds back",holds_to_vswr:2},{id:"valve_amplifier",name:"Valve amplifier with tuned output",holds_to_vswr:3},{id:"keeps_forward",name:"Holds its forward power at any SWR",holds_to_vswr:null}],antenna_views:[{id:"horizon",name:"Horizon"},{id:"sky",name:"Sky"},{id:"cold_sky",name:"Cold sky"}],pack:{shapes:{Adapter:{id:{label:"Id",required:!0,type:"text",shortest:1,longest:40,table:"interfaces"},joins:{label:"At the other end",required:!0,type:"list",of:{type:"text",shortest:1,longest:40},least:1,most:50,table:"interfaces"},source:{label:"Source",required:!0,type:"text",shortest:1,longest:100},kind:{label:"Kind",required:!0,type:"choice",choices:{"common practice":"common practice",datasheet:"datasheet",handbook:"handbook",memory:"memory",standard:"standard"}},figures:{label:"Figure of a data sheet",required:!1,default:[],type:"list",of:{type:"part",of:"AdapterFigures"},least:0,most:100}},AdapterFigures:{to:{label:"To",required:!0,type:"text",shortest:1,longest:40,table:"interfaces"},loss_db:{label:"Insertion loss",required:!1,default:null,type:"number",unit:"dB",sheet_unit:"dB",min:0,max:20},return_loss_db:{label:"Return loss",required:!1,default:null,type:"number",unit:"dB",sheet_unit:"dB",min:0,max:60},up_to_frequency_hz:{label:"Up to",required:!0,type:"number",unit:"Hz",sheet_unit:"MHz",min:1e4,max:2e11},source:{label:"Source",required:!0,type:"text",shortest:1,longest:100},kind:{label:"Kind",required:!0,type:"choice",choices:{"common practice":"common practice",datasheet:"datasheet",handbook:"handbook",memory:"memory",standard:"standard"}},note:{label:"Note",required:!1,default:"",type:"text",shortest:0,longest:600}},Attenuation:{frequency_hz:{label:"Frequency",required:!0,type:"number",unit:"Hz",sheet_unit:"MHz",min:1e4,max:2e11},db_per_m:{label:"Loss",required:!0,type:"number",unit:"dB/m",sheet_unit:"dB/100 m",min:1e-6,max:1e3},source:{label:"Source",required:!0,type:"text",shortest:1,longest:100},kind:{label:"Kind",required:!0,type:"choice",choices:{"common practice":"common practice",datasheet:"datasheet",handbook:"handbook",memory:"memory",standard:"standard"}},note:{label:"Note",required:!1,default:"",type:"text",shortest:0,longest:600},fit:{label:"Counts in the fit",required:!1,default:!0,type:"boolean"},through:{label:"Of a clad core",required:!1,default:!1,type:"boolean"}},Band:{id:{label:"Id",required:!0,type:"text",shortest:1,longest:40},name:{label:"Name",required:!0,type:"text",shortest:1,longest:80},regions:{label:"Region",required:!0,type:"map",keys:["1","2","3"],of:{type:"part",of:"BandEdges"}},typed_as:{label:"Also typed as",required:!1,hint:"What people type for it beside its name",default:[],type:"list",of:{type:"text",shortest:1,longest:80},least:0,most:30}},BandEdges:{low_hz:{label:"From",required:!0,type:"number",unit:"Hz",sheet_unit:"MHz",min:1e4,max:2e11},high_hz:{label:"To",required:!0,type:"number",unit:"Hz",sheet_unit:"MHz",min:1e4,max:2e11},source:{label:"Source",required:!0,type:"text",shortest:1,longest:100},kind:{label:"Kind",required:!0,type:"choice",choices:{"common practice":"common practice",datasheet:"datasheet",handbook:"handbook",memory:"memory",standard:"standard"}},note:{label:"Note",required:!1,default:"",type:"text",shortest:0,longest:600}},Cable:{id:{label:"Id",required:!0,type:"text",shortest:1,longest:40},name:{label:"Name",required:!0,type:"text",shortest:1,longest:80},order:{label:"Place in lists",required:!0,type:"number",unit:"",sheet_unit:"",min:0,max:1e3},summary:{label:"In one sentence",required:!0,type:"text",shortest:0,longest:600},also_called:{label:"Also called",required:!0,type:"list",of:{type:"text",shortest:1,longest:80},least:0,most:20},dielectric:{label:"Dielectric",required:!0,group:"Size and metal",type:"text",shortest:1,longest:40,choices:{solid_pe:"Solid polyethylene",foam_pe:"Foamed polyethylene",ptfe:"PTFE"}},construction:{label:"Construction",required:!0,group:"Size and metal",type:"choice",choices:{corrugated:"corrugated","semi-rigid":"semi-rigid",solid:"solid",stranded:"stranded"}},outdoor_use:{label:"Weather it stands",required:!0,group:"Wear and sealing",type:"choice",choices:{exposed:"exposed",immersed:"immersed",indoor:"indoor",sheltered:"sheltered"}},impedance_ohm:{label:"Impedance",required:!0,group:"Electrical",type:"quantity",unit:"Ω",sheet_unit:"Ω",min:10,max:300},velocity_factor:{label:"Velocity factor",required:!0,group:"Electrical",type:"quantity",unit:"1",sheet_unit:"1",min:.2,max:1},capacitance_f_per_m:{label:"Capacitance",required:!0,group:"Electrical",type:"quantity",unit:"F/m",sheet_unit:"pF/m",min:1e-12,max:1e-9},outer_diameter_m:{label:"Outer diameter",required:!0,group:"Size and metal",type:"quantity",unit:"m",sheet_unit:"mm",min:1e-4,max:.5},centre_conductor:{label:"Centre conductor",required:!0,group:"Size and metal",type:"label",unit:"",sheet_unit:"",choices:{gold:"gold",silver:"silver","silvered copper":"silvered copper","silvered copper-clad steel":"silvered copper-clad steel",nickel:"nickel",copper:"copper","copper tube":"copper tube","copper-clad steel":"copper-clad steel","copper-clad aluminium":"copper-clad aluminium",brass:"brass",white_bronze:"white_bronze",stainless:"stainless",tin:"tin","tinned copper":"tinned copper",aluminium:"aluminium",zinc:"zinc","galvanized steel":"galvanized steel"}},jacket:{label:"Jacket",required:!0,group:"Size and metal",type:"label",unit:"",sheet_unit:""},attenuation_temperature_c:{label:"Attenuation holds at",required:!0,group:"Electrical",type:"quantity",unit:"°C",sheet_unit:"°C",min:-50,max:150},attenuation:{label:"Attenuation",required:!0,hint:"At two frequencies at least",group:"Electrical",type:"list",of:{type:"part",of:"Attenuation"},least:2,most:100},power:{label:"Power rating",required:!0,hint:"What is stated for it; held against what is computed",group:"Heat",type:"list",of:{type:"part",of:"CablePower"},least:0,most:100},working_voltage_rms_v:{label:"Working voltage, rms",required:!0,group:"Electrical",type:"interval",unit:"V",sheet_unit:"V",min:1,max:1e5},lowest_temperature_c:{label:"Lowest temperature",required:!0,group:"Heat",type:"quantity",unit:"°C",sheet_unit:"°C",min:-100,max:100},highest_temperature_c:{label:"Highest temperature",required:!0,group:"Heat",type:"quantity",unit:"°C",sheet_unit:"°C",min:20,max:500},fixed_bend_radius_m:{label:"Bend radius, fixed",required:!0,group:"Wear and sealing",type:"quantity",unit:"m",sheet_unit:"mm",min:.001,max:20},repeated_bend_radius_m:{label:"Bend radius, repeated",required:!1,group:"Wear and sealing",default:null,type:"quantity",unit:"m",sheet_unit:"mm",min:.001,max:20},inner_resistance_ohm_per_m:{label:"Inner resistance",required:!1,group:"Electrical",default:null,type:"quantity",unit:"Ω/m",sheet_unit:"Ω/km",min:1e-6,max:100},outer_resistance_ohm_per_m:{label:"Outer resistance",required:!1,group:"Electrical",default:null,type:"quantity",unit:"Ω/m",sheet_unit:"Ω/km",min:1e-6,max:100},build:{label:"Layers",required:!1,hint:"Left out, those of the nearest cable of like insulation and impedance, scaled to its diameter",group:"Size and metal",default:null,type:"part",of:"CableBuild"},fit_note:{label:"Note on the fit",required:!1,group:"Electrical",default:"",type:"text",shortest:0,longest:600},typed_as:{label:"Also typed as",required:!1,hint:"What people type for it beside its name",default:[],type:"list",of:{type:"text",shortest:1,longest:80},least:0,most:30}},CableBuild:{inner_diameter_m:{label:"Inner conductor, diameter",required:!0,hint:"Over the strands where it is stranded",type:"quantity",unit:"m",sheet_unit:"mm",min:1e-5,max:.1},dielectric_diameter_m:{label:"Insulation, diameter",required:!0,type:"quantity",unit:"m",sheet_unit:"mm",min:1e-4,max:.2},screen_diameter_m:{label:"Outer conductor, diameter",required:!0,type:"quantity",unit:"m",sheet_unit:"mm",min:1e-4,max:.2},inner_area_m2:{label:"Inner conductor, metal",required:!0,hint:"In a cross-section",type:"quantity",unit:"m²",sheet_unit:"mm²",min:1e-9,max:.01},screen_area_m2:{label:"Outer conductor, metal",required:!0,hint:"In a cross-section",type:"quantity",unit:"m²",sheet_unit:"mm²",min:1e-9,max:.01},inner_metal:{label:"Inner conductor is of",required:!0,type:"label",unit:"",sheet_unit:"",choices:{copper:"Copper",brass:"Brass",ptfe:"PTFE",pe:"Polyethylene",aluminium:"Aluminium",copper_clad_steel:"Copper-clad steel",copper_clad_steel_thin:"Copper-clad steel, thinly clad",copper_clad_aluminium:"Copper-clad aluminium",pvc:"PVC",fep:"FEP"}},screen_metal:{label:"Outer conductor is of",required:!0,type:"label",unit:"",sheet_unit:"",choices:{copper:"Copper",brass:"Brass",ptfe:"PTFE",pe:"Polyethylene",aluminium:"Aluminium",copper_clad_steel:"Copper-clad steel",copper_clad_steel_thin:"Copper-clad steel, thinly clad",copper_clad_aluminium:"Copper-clad aluminium",pvc:"PVC",fep:"FEP"}},jacket_material:{label:"Jacket is of",required:!1,hint:"Left out, the outer conductor is bare",default:null,type:"label",unit:"",sheet_unit:"",choices:{copper:"Copper",brass:"Brass",pe:"Polyethylene",pvc:"PVC",fep:"FEP"}}},CablePower:{frequency_hz:{label:"Frequency",required:!0,type:"number",unit:"Hz",sheet_unit:"MHz",min:1e4,max:2e11},power_w:{label:"Power",required:!0,type:"number",unit:"W",sheet_unit:"W",min:.001,max:1e6},ambient_temperature_c:{label:"Air temperature",required:!0,type:"number",unit:"°C",sheet_unit:"°C",min:-100,max:600},conductor_temperature_c:{label:"Hottest conductor",required:!0,type:"number",unit:"°C",sheet_unit:"°C",min:-100,max:600},source:{label:"Source",required:!0,type:"text",shortest:1,longest:100},kind:{label:"Kind",required:!0,type:"choice",choices:{"common practice":"common practice",datasheet:"datasheet",handbook:"handbook",memory:"memory",standard:"standard"}},note:{label:"Note",required:!1,default:"",type:"text",shortest:0,longest:600}},HouseLimit:{id:{label:"Id",required:!0,type:"text",shortest:1,longest:40},power_w:{label:"At most, in PEP",required:!0,type:"number",unit:"W",sheet_unit:"W",min:0,max:1e5},reason:{label:"Because",required:!0,type:"text",shortest:1,longest:300},source:{label:"Source",required:!0,type:"text",shortest:1,longest:100},kind:{label:"Kind",required:!0,type:"choice",choices:{"common practice":"common practice",datasheet:"datasheet",handbook:"handbook",memory:"memory",standard:"standard"}},interfaces:{label:"Through",required:!1,hint:"None chosen: all",default:[],type:"list",of:{type:"text",shortest:1,longest:40},least:0,most:100,table:"interfaces"},bands:{label:"On",required:!1,hint:"None chosen: all",default:[],type:"list",of:{type:"text",shortest:1,longest:40},least:0,most:100,table:"bands"}},InsertionLoss:{loss_db:{label:"Insertion loss, at most",required:!0,type:"quantity",unit:"dB",sheet_unit:"dB",min:.001,max:10},at_frequency_hz:{label:"Insertion loss holds to",required:!0,type:"number",unit:"Hz",sheet_unit:"MHz",min:1e4,max:2e11}},Interface:{id:{label:"Id",required:!0,type:"text",shortest:1,longest:40},name:{label:"Name",required:!0,type:"text",shortest:1,longest:80},order:{label:"Place in lists",required:!0,type:"number",unit:"",sheet_unit:"",min:0,max:1e3},summary:{label:"In one sentence",required:!0,type:"text",shortest:0,longest:600},also_called:{label:"Also called",required:!0,type:"list",of:{type:"text",shortest:1,longest:80},least:0,most:20},nominal_impedance_ohm:{label:"Nominal impedance",required:!0,group:"Electrical",type:"quantity",unit:"Ω",sheet_unit:"Ω",min:10,max:300},constant_impedance:{label:"Constant impedance",required:!0,group:"Electrical",type:"boolean"},inner_diameter_m:{label:"Inner diameter",required:!0,hint:"Of the inner conductor at the mating plane",group:"Size and metal",type:"quantity",unit:"m",sheet_unit:"mm",min:1e-5,max:.2},outer_diameter_m:{label:"Outer diameter",required:!0,hint:"Bore of the outer conductor at the mating plane",group:"Size and metal",type:"quantity",unit:"m",sheet_unit:"mm",min:1e-4,max:.5},dielectric:{label:"Dielectric",required:!0,group:"Size and metal",type:"label",unit:"",sheet_unit:"",choices:{air:"Air",ptfe:"PTFE",pe:"Polyethylene",phenolic:"Filled phenolic",polystyrene:"Polystyrene",ppo:"PPO"}},section_length_m:{label:"Length of the mated pair",required:!0,hint:"Plug and jack joined, from cable to cable",group:"Size and metal",type:"quantity",unit:"m",sheet_unit:"mm",min:1e-4,max:1},bead_length_m:{label:"Length of its beads",required:!0,hint:"Solid supports of both halves together",group:"Size and metal",type:"quantity",unit:"m",sheet_unit:"mm",min:1e-5,max:1},bead_material:{label:"Bead material",required:!0,group:"Size and metal",type:"label",unit:"",sheet_unit:"",choices:{air:"Air",ptfe:"PTFE",pe:"Polyethylene",phenolic:"Filled phenolic",polystyrene:"Polystyrene",ppo:"PPO"}},body_diameter_m:{label:"Body diameter",required:!0,group:"Size and metal",type:"quantity",unit:"m",sheet_unit:"mm",min:.001,max:1},body_length_m:{label:"Body length",required:!0,group:"Size and metal",type:"quantity",unit:"m",sheet_unit:"mm",min:.001,max:1},inner_plating:{label:"Plating inside",required:!0,hint:"Of the centre contact",group:"Size and metal",type:"label",unit:"",sheet_unit:"",choices:{silver:"Silver",gold:"Gold",copper:"Copper",brass:"Brass",nickel:"Nickel",white_bronze:"White bronze",stainless:"Stainless steel"}},outer_plating:{label:"Plating outside",required:!0,hint:"Of the body",group:"Size and metal",type:"label",unit:"",sheet_unit:"",choices:{silver:"Silver",gold:"Gold",copper:"Copper",brass:"Brass",nickel:"Nickel",white_bronze:"White bronze",stainless:"Stainless steel"}},rated_frequency_hz:{label:"Rated frequency",required:!0,group:"Electrical",type:"interval",unit:"Hz",sheet_unit:"MHz",min:1e6,max:2e11},vswr_limit:{label:"Vswr limit",required:!0,group:"Electrical",type:"part",of:"VswrLimit"},vswr_typical:{label:"Usual VSWR",required:!0,hint:"Of a good mated pair",group:"Electrical",type:"quantity",unit:"1",sheet_unit:"1",min:1.001,max:10},insertion_loss:{label:"Insertion loss",required:!0,group:"Electrical",type:"part",of:"InsertionLoss"},working_voltage_rms_v:{label:"Working voltage, rms",required:!0,group:"Electrical",type:"interval",unit:"V",sheet_unit:"V",min:1,max:1e5},proof_voltage_rms_v:{label:"Proof voltage, rms",required:!0,group:"Electrical",type:"interval",unit:"V",sheet_unit:"V",min:1,max:2e5},centre_contact_resistance_ohm:{label:"Centre contact resistance",required:!0,group:"Electrical",type:"interval",unit:"Ω",sheet_unit:"mΩ",min:1e-6,max:1},outer_contact_resistance_ohm:{label:"Outer contact resistance",required:!0,group:"Electrical",type:"interval",unit:"Ω",sheet_unit:"mΩ",min:1e-6,max:1},average_power:{label:"Power rating",required:!0,hint:"What is stated for it; held against what is computed",group:"Heat",type:"list",of:{type:"part",of:"PowerRating"},least:0,most:100},lowest_temperature_c:{label:"Lowest temperature",required:!0,group:"Heat",type:"quantity",unit:"°C",sheet_unit:"°C",min:-100,max:100},highest_temperature_c:{label:"Highest temperature",required:!0,group:"Heat",type:"quantity",unit:"°C",sheet_unit:"°C",min:20,max:500},durability_matings:{label:"Matings it stands",required:!0,group:"Wear and sealing",type:"interval",unit:"matings",sheet_unit:"matings",min:1,max:1e6},coupling:{label:"Coupling",required:!0,group:"Wear and sealing",type:"label",unit:"",sheet_unit:""},coupling_torque_nm:{label:"Coupling torque",required:!0,group:"Wear and sealing",type:"interval",unit:"N·m",sheet_unit:"N·m",min:0,max:500},sealing_mated:{label:"Sealing when mated",required:!0,hint:"None, or an IP code such as IP67",group:"Wear and sealing",type:"label",unit:"",sheet_unit:""},exposure_mated:{label:"Weather it stands when mated",required:!0,group:"Wear and sealing",type:"choice",choices:{exposed:"exposed",immersed:"immersed",indoor:"indoor",sheltered:"sheltered"}},vibration:{label:"Shaking it stands",required:!0,group:"Wear and sealing",type:"label",unit:"",sheet_unit:"",choices:{none:"none",vehicle:"vehicle",severe:"severe"}},cable_diameter_m:{label:"Cables it takes, diameter",required:!0,group:"What it mates with",type:"interval",unit:"m",sheet_unit:"mm",min:1e-4,max:.2},gender:{label:"Plug and jack",required:!0,hint:"How to tell one from the other",group:"What it mates with",type:"label",unit:"",sheet_unit:""},receive_only:{label:"Receive only",required:!0,group:"Electrical",type:"boolean"},receive_only_reason:{label:"Why it is for receiving only",required:!1,group:"Electrical",default:"",type:"text",shortest:0,longest:600},stainless_torque_nm:{label:"Coupling torque of stainless parts",required:!1,group:"Wear and sealing",default:null,type:"interval",unit:"N·m",sheet_unit:"N·m",min:0,max:500},tightened_by:{label:"Tightened by",required:!1,group:"Wear and sealing",default:null,type:"label",unit:"",sheet_unit:"",choices:{"torque wrench":"torque wrench","hand or torque wrench":"hand or torque wrench",hand:"hand"}},customary_cable:{label:"Customary cable",required:!1,hint:"Left out, the thickest of like impedance that it takes",group:"What it mates with",default:null,type:"label",unit:"",sheet_unit:"",table:"cables"},generous_dielectric:{label:"Dielectric of better parts",required:!1,group:"Size and metal",default:null,type:"label",unit:"",sheet_unit:"",choices:{air:"Air",ptfe:"PTFE",pe:"Polyethylene",phenolic:"Filled phenolic",polystyrene:"Polystyrene",ppo:"PPO"}},generous_bead_material:{label:"Bead material of better parts",required:!1,group:"Size and metal",default:null,type:"label",unit:"",sheet_unit:"",choices:{air:"Air",ptfe:"PTFE",pe:"Polyethylene",phenolic:"Filled phenolic",polystyrene:"Polystyrene",ppo:"PPO"}},section:{label:"As a section of line",required:!1,group:"Electrical",default:null,type:"part",of:"Section"},everyday_cable_diameter_m:{label:"Cables the trade puts it on, diameter",required:!1,group:"What it mates with",default:null,type:"interval",unit:"m",sheet_unit:"mm",min:1e-4,max:.2},everyday_lowest_frequency_hz:{label:"The trade fits it from",required:!1,group:"What it mates with",default:null,type:"quantity",unit:"Hz",sheet_unit:"MHz",min:1e4,max:2e11},everyday_highest_power_w:{label:"The trade fits it up to",required:!1,group:"What it mates with",default:null,type:"quantity",unit:"W",sheet_unit:"W",min:.001,max:1e6},special_use:{label:"What it is made for",required:!1,group:"What it mates with",default:null,type:"label",unit:"",sheet_unit:""},typed_as:{label:"Also typed as",required:!1,hint:"What people type for it beside its name",default:[],type:"list",of:{type:"text",shortest:1,longest:80},least:0,most:30}},Mating:{id:{label:"Id",required:!0,type:"text",shortest:1,longest:40},plug:{label:"Plug of",required:!0,type:"text",shortest:1,longest:40,table:"interfaces"},jack:{label:"Jack of",required:!0,type:"text",shortest:1,longest:40,table:"interfaces"},verdict:{label:"Verdict",required:!0,type:"choice",choices:{damages:"damages","does not fit":"does not fit",mates:"mates","mates with care":"mates with care","no contact":"no contact","not held":"not held"}},text:{label:"What comes of it",required:!0,type:"text",shortest:0,longest:600},source:{label:"Source",required:!0,type:"text",shortest:1,longest:100},kind:{label:"Kind",required:!0,type:"choice",choices:{"common practice":"common practice",datasheet:"datasheet",handbook:"handbook",memory:"memory",standard:"standard"}},either_way:{label:"The same for the other family's plug and jack",required:!1,default:!1,type:"boolean"}},Mode:{id:{label:"Id",required:!0,type:"text",shortest:1,longest:40},name:{label:"Name",required:!0,type:"text",shortest:1,longest:80},duty_factor:{label:"Duty factor",required:!0,hint:"Mean over peak power while keyed",type:"quantity",unit:"1",sheet_unit:"1",min:.001,max:1},on_time_s:{label:"An over lasts",required:!1,default:null,type:"quantity",unit:"s",sheet_unit:"s",min:.01,max:86400},off_time_s:{label:"and the pause after it",required:!1,default:null,type:"quantity",unit:"s",sheet_unit:"s",min:.01,max:86400},note:{label:"Note",required:!1,default:"",type:"text",shortest:0,longest:600},typed_as:{label:"Also typed as",required:!1,hint:"What people type for it beside its name",default:[],type:"list",of:{type:"text",shortest:1,longest:80},least:0,most:30}},Overrides:{interfaces:{label:"Interfaces",required:!1,default:[],type:"list",of:{type:"text",shortest:1,longest:40},least:0,most:100},cables:{label:"Cables",required:!1,default:[],type:"list",of:{type:"text",shortest:1,longest:40},least:0,most:100},wire_lines:{label:"Wire lines",required:!1,default:[],type:"list",of:{type:"text",shortest:1,longest:40},least:0,most:100},adapters:{label:"Adapters",required:!1,default:[],type:"list",of:{type:"text",shortest:1,longest:40},least:0,most:100},matings:{label:"Matings",required:!1,default:[],type:"list",of:{type:"text",shortest:1,longest:40},least:0,most:100},bands:{label:"Bands",required:!1,default:[],type:"list",of:{type:"text",shortest:1,longest:40},least:0,most:100},modes:{label:"Modes",required:!1,default:[],type:"list",of:{type:"text",shortest:1,longest:40},least:0,most:100}},Pack:{id:{label:"Id",required:!0,hint:"Short name; it stands before the ids of the pack's sources",type:"text",shortest:1,longest:40},name:{label:"Name of the pack",required:!0,hint:"Name shown beside everything that comes from the pack",type:"text",shortest:1,longest:80},version:{label:"Version or date",required:!0,type:"text",shortest:1,longest:40},sources:{label:"Sources",required:!0,hint:"Where the values come from",type:"list",of:{type:"part",of:"PackSource"},least:0,most:200},note:{label:"What the pack is for",required:!1,default:"",type:"text",shortest:0,longest:600},overrides:{label:"Overrides",required:!1,default:{interfaces:[],cables:[],wire_lines:[],adapters:[],matings:[],bands:[],modes:[]},type:"part",of:"Overrides"},interfaces:{label:"Connector",required:!1,hint:"Kinds of connector",default:[],type:"list",of:{type:"part",of:"Interface"},least:0,most:60},cables:{label:"Cable",required:!1,hint:"Cables",default:[],type:"list",of:{type:"part",of:"Cable"},least:0,most:60},wire_lines:{label:"Two-wire line",required:!1,hint:"Two-wire lines",default:[],type:"list",of:{type:"part",of:"WireLine"},least:0,most:60},adapters:{label:"Adapters",required:!1,hint:"What the trade sells",default:[],type:"list",of:{type:"part",of:"Adapter"},least:0,most:60},matings:{label:"Meeting of two connectors",required:!1,hint:"What comes of two connectors meeting",default:[],type:"list",of:{type:"part",of:"Mating"},least:0,most:200},bands:{label:"Band",required:!1,hint:"Amateur bands",default:[],type:"list",of:{type:"part",of:"Band"},least:0,most:60},modes:{label:"Mode",required:!1,hint:"Emission modes",default:[],type:"list",of:{type:"part",of:"Mode"},least:0,most:60},default_powers_w:{label:"Default powers",required:!1,hint:"Power levels of a matrix that asks for none [W]",default:[],type:"list",of:{type:"number",unit:"W",sheet_unit:"W",min:0,max:1e5},least:0,most:24},house_limits:{label:"House limit",required:!1,hint:"Most power by the station's own rules",default:[],type:"list",of:{type:"part",of:"HouseLimit"},least:0,most:100}},PackSource:{id:{label:"Id",required:!0,type:"text",shortest:1,longest:40},title:{label:"Title of the source",required:!0,type:"text",shortest:1,longest:300},seen:{label:"How it was seen",required:!0,type:"choice",choices:{"as quoted":"as quoted",computed:"computed","from memory":"from memory",read:"read"}},address:{label:"Web address",required:!1,default:"",type:"text",shortest:0,longest:300},body:{label:"By whom",required:!1,default:"",type:"text",shortest:0,longest:100},year:{label:"Year",required:!1,default:"",type:"text",shortest:0,longest:60},place:{label:"Page or table",required:!1,default:"",type:"text",shortest:0,longest:100}},PowerRating:{power_w:{label:"Power",required:!0,type:"number",unit:"W",sheet_unit:"W",min:.001,max:1e6},frequency_hz:{label:"Frequency",required:!0,type:"number",unit:"Hz",sheet_unit:"MHz",min:1e4,max:2e11},ambient_temperature_c:{label:"Air temperature",required:!0,type:"number",unit:"°C",sheet_unit:"°C",min:-100,max:600},contact_temperature_c:{label:"Hottest contact",required:!0,type:"number",unit:"°C",sheet_unit:"°C",min:-100,max:600},altitude_m:{label:"Altitude",required:!0,type:"number",unit:"m",sheet_unit:"m",min:0,max:3e4},source:{label:"Source",required:!0,type:"text",shortest:1,longest:100},kind:{label:"Kind",required:!0,type:"choice",choices:{"common practice":"common practice",datasheet:"datasheet",handbook:"handbook",memory:"memory",standard:"standard"}},note:{label:"Note",required:!1,default:"",type:"text",shortest:0,longest:600},cable:{label:"Cable",required:!1,default:null,type:"text",shortest:1,longest:100,table:"cables"}},Section:{impedance_ohm:{label:"Impedance",required:!0,type:"interval",unit:"Ω",sheet_unit:"Ω",min:5,max:500},electrical_length_m:{label:"Electrical length",required:!0,type:"interval",unit:"m",sheet_unit:"mm",min:1e-4,max:1}},VswrLimit:{at_dc:{label:"Greatest VSWR at DC",required:!0,type:"quantity",unit:"1",sheet_unit:"1",min:1,max:10},slope_per_hz:{label:"Growth of the greatest VSWR",required:!0,type:"quantity",unit:"1/Hz",sheet_unit:"1/GHz",min:0,max:1e-7}},WireLine:{id:{label:"Id",required:!0,type:"text",shortest:1,longest:40},name:{label:"Name",required:!0,type:"text",shortest:1,longest:80},order:{label:"Place in lists",required:!0,type:"number",unit:"",sheet_unit:"",min:0,max:1e3},summary:{label:"In one sentence",required:!0,type:"text",shortest:0,longest:600},also_called:{label:"Also called",required:!0,type:"list",of:{type:"text",shortest:1,longest:80},least:0,most:20},construction:{label:"Construction",required:!0,group:"Size and metal",type:"choice",choices:{"open wire":"open wire",ribbon:"ribbon",window:"window"}},outdoor_use:{label:"Weather it stands",required:!0,group:"Wear and sealing",type:"choice",choices:{exposed:"exposed",immersed:"immersed",indoor:"indoor",sheltered:"sheltered"}},impedance_ohm:{label:"Impedance",required:!0,group:"Electrical",type:"quantity",unit:"Ω",sheet_unit:"Ω",min:50,max:1e3},velocity_factor:{label:"Velocity factor",required:!0,group:"Electrical",type:"quantity",unit:"1",sheet_unit:"1",min:.2,max:1},wire:{label:"Wire",required:!0,group:"Size and metal",type:"label",unit:"",sheet_unit:""},wet:{label:"Wet",required:!0,hint:"What rain and ice do to it",group:"Wear and sealing",type:"label",unit:"",sheet_unit:""},attenuation_temperature_c:{label:"Attenuation holds at",required:!0,group:"Electrical",type:"quantity",unit:"°C",sheet_unit:"°C",min:-50,max:150},attenuation:{label:"Attenuation",required:!0,hint:"At two frequencies at least",group:"Electrical",type:"list",of:{type:"part",of:"Attenuation"},least:2,most:100},working_voltage_rms_v:{label:"Working voltage, rms",required:!0,group:"Electrical",type:"interval",unit:"V",sheet_unit:"V",min:1,max:1e5},lowest_temperature_c:{label:"Lowest temperature",required:!0,group:"Heat",type:"quantity",unit:"°C",sheet_unit:"°C",min:-100,max:100},highest_temperature_c:{label:"Highest temperature",required:!0,group:"Heat",type:"quantity",unit:"°C",sheet_unit:"°C",min:20,max:500},wire_diameter_m:{label:"Wire diameter",required:!1,group:"Size and metal",default:null,type:"quantity",unit:"m",sheet_unit:"mm",min:1e-5,max:.1},spacing_m:{label:"Spacing",required:!1,hint:"Between the wires' middles",group:"Size and metal",default:null,type:"quantity",unit:"m",sheet_unit:"mm",min:1e-4,max:2},fit_note:{label:"Note on the fit",required:!1,group:"Electrical",default:"",type:"text",shortest:0,longest:600}}},groups:["Size and metal","Electrical","Heat","Wear and sealing","What it mates with"],kinds:["standard","datasheet","handbook","common practice","memory"],most_bytes:1e6},question:{families:{uhf:"UHF (PL-259 / SO-239)",mini_uhf:"Mini-UHF",bnc:"BNC",bnc_75:"BNC 75 Ω",tnc:"TNC",n:"N",n_75:"N 75 Ω",c:"C",hn:"HN","7_16":"7/16","4_3_10":"4.3-10",sma:"SMA",rp_sma:"RP-SMA",smb:"SMB",mcx:"MCX",mmcx:"MMCX",f:"F","3_5mm":"3.5 mm","2_92mm":"2.92 mm"},modes:{ssb:"SSB",ssb_processed:"processed SSB",cw:"CW",cw_eme:"CW EME",fm:"FM",dmr:"DMR",am:"AM",rtty:"RTTY",psk31:"PSK31",ft8:"FT8",ft4:"FT4",jt65:"JT65",q65_60:"Q65-60",q65_300:"Q65-300",msk144:"MSK144",wspr:"WSPR",sstv:"SSTV",carrier:"key down"},names:["PL-259","SO-239","PL-259 / SO-239","UHF","Miniature UHF","mini UHF","BNC 50 Ω","50 ohm BNC","BNC","75 Ω BNC","BNC 75 Ω","Threaded BNC","TNC","Type N","N type","50 ohm N","N","75 Ω type N","75 ohm N","N 75 Ω","Type C","C type","C","High-voltage N","type HN","HN type","HN","7-16 DIN","DIN 7/16","716 DIN","DIN 716","7/16","4310","4.3-10 DIN","4.3-10","Subminiature A","SMA","Reverse polarity SMA","reverse SMA","SMA-RP","RP-SMA","Subminiature B","SMB","Micro coaxial","MCX","Micro-miniature coaxial","MMCX","F type","type F","TV connector","F","3.5 mm","2.92","2.92 mm","2200 m","630 m","160 m","top band","80 m","60 m","40 m","30 m","20 m","17 m","15 m","12 m","10 m","6 m","magic band","4 m","2 m","1.25 m","70 cm","33 cm","23 cm","13 cm","9 cm","5 cm","3 cm","1.2 cm","6 mm","SSB","USB","LSB","sideband","single sideband","phone","voice","SSB voice","SSB, conversation","processed SSB","compressed SSB","SSB with compression","SSB with processing","SSB with a processor","contest SSB","SSB, processed","CW","Morse","Morse code","telegraphy","CW, conversation","CW EME","EME CW","FM","NBFM","NFM","FM repeater","FM voice","DMR","DMR, one time slot","AM","AM voice (PEP is 4 × carrier)","RTTY","FSK","AFSK","teletype","RTTY, FSK or AFSK","PSK31","PSK","BPSK31","FT8","FT4","JT65","JT9","JT4","JT65, EME","Q65-60","Q65","Q65-60, EME","Q65-300","MSK144","MSK","WSPR","SSTV","slow scan","slow-scan TV","key down","carrier","continuous carrier","tune","tune up","tuning","tuning up","steady carrier","Carrier (tune-up)","RG-174","RG-174/U","M17/119","M17/173","RG-58","RG-58 C/U","M17/28","M17/155","Foam 4.95 mm, 200 size","0.195 in low-loss foam","200 size","size 200","200 type","5 mm foam","200 coax","RG-223","RG-223/U","M17/84","M17/167","RG-213","RG-213/U","RG-8 A/U","M17/74","M17/163","RG-8 foam","RG-8/U","RG-8 foam type","RG-8","RG-214","RG-214/U","M17/75","M17/164","RG-217","RG-217/U","M17/78","RG-8X","mini-8","RG-8 mini","mini RG-8","RG-8X mini","Foam 6.1 mm, 240 size","0.240 in low-loss foam","240 size","size 240","240 type","6 mm foam","240 coax","Foam 7.3 mm","European 7 mm low-loss foam","7 mm foam","7.3 mm foam","Foam 10.3 mm, 400 size","0.405 in low-loss foam","400 size","size 400","400 type","400 class","10.3 mm foam","0.405 in foam","400 coax","Foam 10.2 mm, stranded","European 10 mm low-loss foam","10 mm foam","10.2 mm foam","Foam 15 mm, 600 size","0.590 in low-loss foam","600 size","size 600","600 type","600 class","15 mm foam","600 coax","Corrugated foam 1/2 in","1/2 in foam hardline","1/2 in","1/2 inch",'1/2"',"half inch","half-inch hardline","1/2 in hardline","1/2 inch hardline","1/2 hardline","Corrugated foam 7/8 in","7/8 in foam hardline","7/8 in","7/8 inch",'7/8"',"seven-eighths","7/8 in hardline","7/8 inch hardline","7/8 hardline","RG-178","RG-178 B/U","M17/93","M17/169","RG-188","RG-188 A/U","M17/69","RG-316","RG-316/U","M17/113","M17/172","RG-303","RG-303/U","M17/111","RG-142","RG-142 B/U","M17/60","M17/158","RG-400","RG-400/U","M17/128","M17/175","RG-393","RG-393/U","M17/127","RG-405","RG-405/U","M17/133","0.085 in semi-rigid","0.085 semi-rigid","085 semi-rigid","0.085","RG-402","RG-402/U","M17/130","0.141 in semi-rigid","0.141 semi-rigid","141 semi-rigid","0.141","RG-59","RG-59 B/U","M17/29","RG-6","RG-6/U drop cable","RG-11","RG-11 A/U","M17/6","new","clean","like new","brand new","good condition","New and clean","worn","worn out","well worn","corroded","rusty","oxidised","oxidized","green","tarnished","mast","on a mast","up the mast","up a mast","on the mast","tower","on the tower","up the tower","on a tower","at the feed point","masthead","mobile","car","in the car","in a car","truck","van","vehicle","in a vehicle","boat","portable","field day","in the field","backpack","indoors","indoor","inside","in the shack","shack","in the house","under cover","dry","sheltered","under a roof","under the roof","under the eaves","porch","garage","attic","loft","outdoors","outdoor","outside","exposed","in the rain","rain","in the weather","in the snow","snow","wet","weather","immersed","under water","submerged","in water","flooded","sealed","taped","taped up","booted","weatherproofed","waterproofed","with tape","self-amalgamating tape","unsealed","untaped","not sealed","not taped","without tape","no tape","bare","vibration","vibrating","shaken","severe vibration","heavy vibration","shade","in the shade","shaded","no sun","receive","receiving","receive only","RX","RX only","listening","SWL","forward","forward power","net","net power","into the load","delivered"]},longest_s:Cu,first_bands:["160m","80m","40m","30m","20m","17m","15m","12m","10m","6m","2m","70cm","23cm","13cm","5cm","3cm"],matrix:{families:[{id:"uhf",name:"UHF",summary:"Threaded 1930s interface without constant impedance",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 6.341 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Its impedance is known from the geometry, so the match is computed at any frequency.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Usually used up to 300 MHz.",weather:"Mated it is safe from damp, not from rain; the joint sits indoors.",vibration:"Threaded coupling stands the vibration of a vehicle; asked: no vibration.",wear:"Made for 100 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 4.95 to 10.3 mm; no cable given.",cold:"Rated down to -55 °C; the air here: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"mini_uhf",name:"Mini-UHF",summary:"Small threaded interface of mobile radios, no constant impedance",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 15.62 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Its impedance is known from the geometry, so the match is computed at any frequency.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Usually used up to 2 GHz.",weather:"Mated it is safe from damp, not from rain; the joint sits indoors.",vibration:"Threaded coupling stands the vibration of a vehicle; asked: no vibration.",wear:"Made for 100 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 2.49 to 6.2 mm; no cable given.",cold:"Rated down to -55 °C; the air here: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"bnc",name:"BNC",summary:"Quick bayonet interface for instruments and small cables",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 16.1 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 4 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Usually used up to 4 GHz.",weather:"Mated it is safe from damp, not from rain; the joint sits indoors.",vibration:"Bayonet coupling stands the vibration of a vehicle; asked: no vibration.",wear:"Made for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 2.49 to 6.2 mm; no cable given.",cold:"Rated down to -65 °C; the air here: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"bnc_75",name:"BNC 75 Ω",summary:"Bayonet interface of video and reception, 75 Ω",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 23.47 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 3 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Usually used up to 1 GHz.",weather:"Mated it is safe from damp, not from rain; the joint sits indoors.",vibration:"Bayonet coupling stands the vibration of a vehicle; asked: no vibration.",wear:"Made for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 2.5 to 7 mm; no cable given.",cold:"Rated down to -65 °C; the air here: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"tnc",name:"TNC",summary:"Threaded relative of BNC, steady under vibration and at microwaves",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 16.1 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 11 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: IP67. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Usually used up to 11 GHz.",weather:"Mated it is weatherproof; the joint sits indoors.",vibration:"Threaded coupling stands severe vibration; asked: no vibration.",wear:"Made for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 2.49 to 10.3 mm; no cable given.",cold:"Rated down to -65 °C; the air here: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"n",name:"N",summary:"Threaded 7 mm interface, air dielectric at the mating plane",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 19.4 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 18 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: IP67. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Usually used up to 11 GHz.",weather:"Mated it is weatherproof; the joint sits indoors.",vibration:"Threaded coupling stands severe vibration; asked: no vibration.",wear:"Made for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 2.49 to 28 mm; no cable given.",cold:"Rated down to -65 °C; the air here: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"n_75",name:"N 75 Ω",summary:"N interface with the thin 75 Ω centre contact",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 21.79 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 3 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: IP67. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Usually used up to 1.5 GHz.",weather:"Mated it is weatherproof; the joint sits indoors.",vibration:"Threaded coupling stands severe vibration; asked: no vibration.",wear:"Made for 100 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 6.1 to 16.5 mm; no cable given.",cold:"Rated down to -65 °C; the air here: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"c",name:"C",summary:"Large bayonet interface of the power class between N and HN",receive_only:!1,gate_reasons:{te11:"Its TE11 cutoff, by a guessed bore or filling, is 10.47 GHz; the published limit, higher, counts.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 11 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: IP54. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Usually used up to 10 GHz.",weather:"Mated it is safe from damp, not from rain; the joint sits indoors.",vibration:"Bayonet coupling stands the vibration of a vehicle; asked: no vibration.",wear:"Made for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 4.95 to 10.8 mm; no cable given.",cold:"Rated down to -65 °C; the air here: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"hn",name:"HN",summary:"High-voltage threaded interface, larger than N",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 9.516 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 6 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: IP67. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Usually used up to 4 GHz.",weather:"Mated it is weatherproof; the joint sits indoors.",vibration:"Threaded coupling stands severe vibration; asked: no vibration.",wear:"Made for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 10.3 to 13.9 mm; no cable given.",cold:"Rated down to -55 °C; the air here: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"7_16",name:"7/16",summary:"Large threaded interface for high power and low intermodulation",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 8.466 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 7.5 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: IP67. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Usually used up to 6 GHz.",weather:"Mated it is weatherproof; the joint sits indoors.",vibration:"Threaded coupling stands severe vibration; asked: no vibration.",wear:"Made for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 10.3 to 28 mm; no cable given.",cold:"Rated down to -55 °C; the air here: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"4_3_10",name:"4.3-10",summary:"Threaded 10 mm interface of mobile base stations: 7/16 class power in a smaller body, low intermodulation",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 13.57 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 12 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: IP67. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Usually used up to 6 GHz.",weather:"Mated it is weatherproof; the joint sits indoors.",vibration:"Threaded coupling stands the vibration of a vehicle; asked: no vibration.",wear:"Made for 100 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 6 to 16 mm; no cable given.",cold:"Rated down to -40 °C; the air here: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"sma",name:"SMA",summary:"Threaded subminiature interface, solid PTFE to the mating plane",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 25.2 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 26.5 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Usually used up to 18 GHz.",weather:"Mated it is safe from damp, not from rain; the joint sits indoors.",vibration:"Threaded coupling stands severe vibration; asked: no vibration.",wear:"Made for 100 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 1.8 to 6.2 mm; no cable given.",cold:"Rated down to -65 °C; the air here: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"rp_sma",name:"RP-SMA",summary:"SMA with the centre contacts exchanged, common on wireless network gear; no standard of its own",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 25.2 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 18 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Usually used up to 6 GHz.",weather:"Mated it is safe from damp, not from rain; the joint sits indoors.",vibration:"Threaded coupling stands the vibration of a vehicle; asked: no vibration.",wear:"Made for 100 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 1.1 to 6.2 mm; no cable given.",cold:"Rated down to -65 °C; the air here: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"smb",name:"SMB",summary:"Snap-on subminiature interface for the inside of equipment",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 34.89 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 10 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Usually used up to 4 GHz.",weather:"Mated it is for indoors only; the joint sits indoors.",vibration:"Snap coupling stands the vibration of a vehicle; asked: no vibration.",wear:"Made for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 1.8 to 3 mm; no cable given.",cold:"Rated down to -65 °C; the air here: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"mcx",name:"MCX",summary:"Snap-on microminiature interface, about a third smaller than SMB",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 43.62 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 6 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Usually used up to 6 GHz.",weather:"Mated it is for indoors only; the joint sits indoors.",vibration:"Snap coupling stands the vibration of a vehicle; asked: no vibration.",wear:"Made for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 1.8 to 3 mm; no cable given.",cold:"Rated down to -65 °C; the air here: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"mmcx",name:"MMCX",summary:"Snap-on micro-miniature interface that turns freely when mated",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 65.42 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 6 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Usually used up to 6 GHz.",weather:"Mated it is for indoors only; the joint sits indoors.",vibration:"Snap coupling stands no vibration; asked: no vibration.",wear:"Made for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 1.1 to 2.6 mm; no cable given.",cold:"Rated down to -55 °C; the air here: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"f",name:"F",summary:"Threaded 75 Ω interface of cable television and satellite reception; the cable conductor is the pin",receive_only:!0,gate_reasons:{te11:"Below its TE11 cutoff, 16.68 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 3 GHz.",receive_only:"The pin is the cable's own, often copper-clad steel, conductor in a spring clip; no standard gives it a voltage or power rating.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Usually used up to 1 GHz.",weather:"Mated it is safe from damp, not from rain; the joint sits indoors.",vibration:"Threaded coupling stands no vibration; asked: no vibration.",wear:"Made for 50 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 6.1 to 10.3 mm; no cable given.",cold:"Rated down to -40 °C; the air here: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"3_5mm",name:"3.5 mm",summary:"Precision air-dielectric interface that mates with SMA",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 38.8 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 33 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Usually used up to 26.5 GHz.",weather:"Mated it is for indoors only; the joint sits indoors.",vibration:"Threaded coupling stands the vibration of a vehicle; asked: no vibration.",wear:"Made for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 2.2 to 5.4 mm; no cable given.",cold:"Rated down to -55 °C; the air here: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""},{id:"2_92mm",name:"2.92 mm",summary:"Precision air-dielectric interface to 40 GHz that mates with SMA and 3.5 mm",receive_only:!1,gate_reasons:{te11:"Below its TE11 cutoff, 46.48 GHz, one wave travels; above it no figure holds.",cable_te11:"Above the TE11 cutoff of its cable, where a second wave travels, no figure holds.",no_figures:"Published match figures end at 40 GHz.",receive_only:"Made to transmit through.",no_heat_room:"The air, with the sun's share, must be cooler than the contact and the cable may get.",immersion:"Sealing when mated: none. Tape does not make it immersion-proof.",match:"The joint alone misses the return loss asked for, even by the generous sources.",customary_frequency:"Usually used up to 40 GHz.",weather:"Mated it is for indoors only; the joint sits indoors.",vibration:"Threaded coupling stands the vibration of a vehicle; asked: no vibration.",wear:"Made for 500 matings; 50 are needed over the service life.",cable_fit:"Made for cables of 1.2 to 3.6 mm; no cable given.",cold:"Rated down to -55 °C; the air here: 40 °C.",match_doubt:"The joint alone misses the return loss asked for by the cautious sources, not by the generous.",house:"The station has set itself no limit here."},pack:""}],columns:[{id:"160m",name:"160 m",low_hz:181e4,high_hz:2e6,pack:""},{id:"80m",name:"80 m",low_hz:35e5,high_hz:38e5,pack:""},{id:"40m",name:"40 m",low_hz:7e6,high_hz:72e5,pack:""},{id:"30m",name:"30 m",low_hz:101e5,high_hz:1015e4,pack:""},{id:"20m",name:"20 m",low_hz:14e6,high_hz:1435e4,pack:""},{id:"17m",name:"17 m",low_hz:18068e3,high_hz:18168e3,pack:""},{id:"15m",name:"15 m",low_hz:21e6,high_hz:2145e4,pack:""},{id:"12m",name:"12 m",low_hz:2489e4,high_hz:2499e4,pack:""},{id:"10m",name:"10 m",low_hz:28e6,high_hz:297e5,pack:""},{id:"6m",name:"6 m",low_hz:5e7,high_hz:52e6,pack:""},{id:"2m",name:"2 m",low_hz:144e6,high_hz:146e6,pack:""},{id:"70cm",name:"70 cm",low_hz:43e7,high_hz:44e7,pack:""},{id:"23cm",name:"23 cm",low_hz:124e7,high_hz:13e8,pack:""},{id:"13cm",name:"13 cm",low_hz:23e8,high_hz:245e7,pack:""},{id:"5cm",name:"5 cm",low_hz:565e7,high_hz:585e7,pack:""},{id:"3cm",name:"3 cm",low_hz:1e10,high_hz:105e8,pack:""}],powers_w:[0,5,50,100,400,1500],limits:["cable","contact","voltage"],gates:[{id:"te11",name:"TE11 cutoff",hard:!0},{id:"cable_te11",name:"TE11 cutoff of the cable",hard:!0},{id:"no_figures",name:"Published figures",hard:!0},{id:"receive_only",name:"Receive only",hard:!0},{id:"no_heat_room",name:"Air temperature",hard:!0},{id:"immersion",name:"Immersion",hard:!0},{id:"match",name:"Match",hard:!0},{id:"customary_frequency",name:"Usual frequency",hard:!1},{id:"weather",name:"Weather",hard:!1},{id:"vibration",name:"Vibration",hard:!1},{id:"wear",name:"Wear",hard:!1},{id:"cable_fit",name:"Cable fit",hard:!1},{id:"cold",name:"Cold",hard:!1},{id:"match_doubt",name:"Match uncertain",hard:!1},{id:"house",name:"House limit",hard:!0}],margin_db:[[[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,22.242,12.242,9.23172,3.21112,-2.52919],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,20.2646,10.2646,7.25425,1.23365,-4.50666],[null,17.463,7.46298,4.45268,-1.56792,-7.30823],[null,14.4984,4.49844,1.48814,-4.53246,-10.2728],[null,12.6411,2.64107,-.369227,-6.38983,-12.1301],[null,9.92113,-.078869,-3.08917,-9.10977,-14.8501],[null,7.97843,-2.02157,-5.03187,-11.0525,-16.7928]],[[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.8013,14.8013,11.791,5.77045,.0301332],[null,24.4505,14.4505,11.4402,5.41962,-.320688],[null,24.0522,14.0522,11.0419,5.02133,-.718979],[null,22.746,12.746,9.73569,3.71509,-2.02523],[null,20.2646,10.2646,7.25425,1.23365,-4.50666],[null,17.463,7.46298,4.45268,-1.56792,-7.30823],[null,14.4984,4.49844,1.48814,-4.53246,-10.2728],[null,12.6411,2.64107,-.369227,-6.38983,-12.1301],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.8272,14.8272,11.8169,5.79635,.0560324],[null,24.4498,14.4498,11.4395,5.41886,-.321449],[null,23.2237,13.2237,10.2134,4.19275,-1.54756],[null,20.9547,10.9547,7.94441,1.92381,-3.8165],[null,18.51,8.51,5.4997,-.5209,-6.26121],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.8013,14.8013,11.791,5.77045,.0301332],[null,24.4505,14.4505,11.4402,5.41962,-.320688],[null,24.0522,14.0522,11.0419,5.02133,-.718979],[null,22.746,12.746,9.73569,3.71509,-2.02523],[null,20.2646,10.2646,7.25425,1.23365,-4.50666],[null,17.463,7.46298,4.45268,-1.56792,-7.30823],[null,14.4984,4.49844,1.48814,-4.53246,-10.2728],[null,12.6411,2.64107,-.369227,-6.38983,-12.1301],[null,9.92113,-.078869,-3.08917,-9.10977,-14.8501],[null,7.97843,-2.02157,-5.03187,-11.0525,-16.7928]],[[null,34.0106,24.0106,21.0003,14.9797,9.23941],[null,34.0106,24.0106,21.0003,14.9797,9.23941],[null,34.0106,24.0106,21.0003,14.9797,9.23941],[null,33.7009,23.7009,20.6906,14.67,8.92965],[null,32.9192,22.9192,19.9089,13.8883,8.14803],[null,32.3804,22.3804,19.3701,13.3495,7.6092],[null,31.9902,21.9902,18.9799,12.9593,7.21898],[null,31.6292,21.6292,18.6189,12.5983,6.85797],[null,31.2186,21.2186,18.2083,12.1877,6.44734],[null,29.8656,19.8656,16.8553,10.8347,5.09443],[null,27.2668,17.2668,14.2565,8.23591,2.4956],[null,24.2867,14.2867,11.2764,5.25584,-.484471],[null,21.0938,11.0938,8.08345,2.06285,-3.67746],[null,19.0848,9.08484,6.07454,.0539397,-5.68637],[null,16.1492,6.14925,3.13895,-2.88165,-8.62196],[null,14.0655,4.06554,1.05524,-4.96536,-10.7057]],[[null,31.5118,21.5118,18.5015,12.4809,6.74064],[null,31.5118,21.5118,18.5015,12.4809,6.74064],[null,30.6889,20.6889,17.6786,11.658,5.91768],[null,29.9403,19.9403,16.93,10.9094,5.16904],[null,29.1848,19.1848,16.1745,10.1539,4.41356],[null,28.6697,18.6697,15.6594,9.63879,3.89848],[null,28.3069,18.3069,15.2966,9.27602,3.53571],[null,27.9731,17.9731,14.9628,8.94216,3.20184],[null,27.5955,17.5955,14.5852,8.56455,2.82424],[null,26.3689,16.3689,13.3586,7.33796,1.59764],[null,24.0986,14.0986,11.0883,5.06768,-.672631],[null,21.6515,11.6515,8.64119,2.62059,-3.11972],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[null,34.0106,24.0106,21.0003,14.9797,9.23941],[null,34.0106,24.0106,21.0003,14.9797,9.23941],[null,34.0106,24.0106,21.0003,14.9797,9.23941],[null,33.7322,23.7322,20.7219,14.7013,8.96103],[null,32.9311,22.9311,19.9208,13.9002,8.15987],[null,32.3804,22.3804,19.3701,13.3495,7.60922],[null,31.9902,21.9902,18.9799,12.9593,7.21898],[null,31.6292,21.6292,18.6189,12.5983,6.85797],[null,31.2186,21.2186,18.2083,12.1877,6.44734],[null,29.8656,19.8656,16.8553,10.8347,5.09443],[null,27.2668,17.2668,14.2565,8.23591,2.4956],[null,24.2867,14.2867,11.2764,5.25584,-.484471],[null,21.0938,11.0938,8.08345,2.06285,-3.67746],[null,19.0848,9.08484,6.07454,.0539397,-5.68637],[null,16.1492,6.14925,3.13895,-2.88165,-8.62196],[null,14.0655,4.06554,1.05524,-4.96536,-10.7057]],[[null,37.4076,27.4076,24.3973,18.3767,12.6364],[null,35.9685,25.9685,22.9582,16.9376,11.1973],[null,34.5194,24.5194,21.5091,15.4885,9.74822],[null,33.7322,23.7322,20.7219,14.7013,8.96103],[null,32.9311,22.9311,19.9208,13.9002,8.15987],[null,32.3804,22.3804,19.3701,13.3495,7.60922],[null,31.9902,21.9902,18.9799,12.9593,7.21898],[null,31.6292,21.6292,18.6189,12.5983,6.85797],[null,31.2186,21.2186,18.2083,12.1877,6.44734],[null,29.8656,19.8656,16.8553,10.8347,5.09443],[null,27.2668,17.2668,14.2565,8.23591,2.4956],[null,24.2867,14.2867,11.2764,5.25584,-.484471],[null,21.0938,11.0938,8.08345,2.06285,-3.67746],[null,19.0848,9.08484,6.07454,.0539397,-5.68637],[null,16.1492,6.14925,3.13895,-2.88165,-8.62196],[null,null,null,null,null,null]],[[null,42.6379,32.6379,29.6276,23.607,17.8667],[null,42.6379,32.6379,29.6276,23.607,17.8667],[null,41.3912,31.3912,28.3809,22.3603,16.62],[null,40.6385,30.6385,27.6282,21.6076,15.8672],[null,39.8781,29.8781,26.8678,20.8472,15.1069],[null,39.3592,29.3592,26.3489,20.3283,14.588],[null,38.9935,28.9935,25.9832,19.9626,14.2222],[null,38.6566,28.6566,25.6463,19.6257,13.8854],[null,38.2754,28.2754,25.2651,19.2445,13.5042],[null,37.0348,27.0348,24.0245,18.0039,12.2636],[null,34.7262,24.7262,21.7159,15.6953,9.95498],[null,32.2113,22.2113,19.201,13.1804,7.44009],[null,29.6636,19.6636,16.6533,10.6327,4.8924],[null,28.1206,18.1206,15.1103,9.08966,3.34935],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,26.6145,16.6145,13.6042,7.58355,1.84324],[null,25.1203,15.1203,12.11,6.08939,.34908],[null,23.001,13.001,9.99073,3.97013,-1.77019],[null,null,null,null,null,null]],[[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,23.1482,13.1482,10.1379,4.11731,-1.62301],[null,20.6681,10.6681,7.65777,1.63717,-4.10315],[null,18.1758,8.17577,5.16547,-.855134,-6.59545],[null,16.6787,6.67867,3.66838,-2.35222,-8.09254],[null,14.5556,4.55556,1.54526,-4.47534,-10.2157],[null,13.0721,3.07214,.0618433,-5.95876,-11.6991]],[[null,23.5607,13.5607,10.5504,4.52985,-1.21047],[null,22.6822,12.6822,9.67193,3.65133,-2.08898],[null,21.7951,11.7951,8.78483,2.76423,-2.97608],[null,21.3112,11.3112,8.30089,2.28029,-3.46002],[null,20.8163,10.8163,7.80601,1.78541,-3.9549],[null,20.4743,10.4743,7.46403,1.44343,-4.29688],[null,20.2309,10.2309,7.22056,1.19996,-4.54035],[null,20.0047,10.0047,6.99436,.973762,-4.76655],[null,19.7461,9.74608,6.73578,.715184,-5.02513],[null,18.8519,8.8519,5.8416,-.178995,-5.91931],[null,16.3754,6.37543,3.36513,-2.65547,-8.39578],[null,13.5817,3.58167,.571371,-5.44923,-11.1895],[null,10.6276,.62762,-2.38268,-8.40328,-14.1436],[null,8.77755,-1.22245,-4.23275,-10.2534,-15.9937],[null,6.06845,-3.93155,-6.94185,-12.9624,-18.7028],[null,4.13315,-5.86685,-8.87715,-14.8977,-20.6381]],[[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,23.8517,13.8517,10.8414,4.82083,-.919485],[null,21.5641,11.5641,8.55376,2.53316,-3.20716],[null,19.086,9.08596,6.07566,.0550616,-5.68525],[null,16.597,6.59695,3.58665,-2.43395,-8.17426],[null,15.1026,5.10262,2.09232,-3.92828,-9.66859],[null,12.9846,2.98463,-.0256682,-6.04627,-11.7866],[null,null,null,null,null,null]],[[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,23.8517,13.8517,10.8414,4.82083,-.919485],[null,21.5641,11.5641,8.55376,2.53316,-3.20716],[null,19.086,9.08596,6.07566,.0550616,-5.68525],[null,16.597,6.59695,3.58665,-2.43395,-8.17426],[null,15.1026,5.10262,2.09232,-3.92828,-9.66859],[null,12.9846,2.98463,-.0256682,-6.04627,-11.7866],[null,null,null,null,null,null]],[[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,16.2348,6.23483,3.22453,-2.79607,-8.53638],[null,14.7405,4.7405,1.7302,-4.2904,-10.0307],[null,12.6225,2.62251,-.38779,-6.40839,-12.1487],[null,null,null,null,null,null]],[[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,20.6616,10.6616,7.6513,1.6307,-4.10961],[null,18.1758,8.17577,5.16547,-.855134,-6.59545],[null,16.6787,6.67867,3.66838,-2.35222,-8.09254],[null,14.5556,4.55556,1.54526,-4.47534,-10.2157],[null,13.0721,3.07214,.0618433,-5.95876,-11.6991]],[[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.1587,8.15865,5.14835,-.872246,-6.61256],[null,16.6665,6.66654,3.65624,-2.36436,-8.10467],[null,14.5487,4.5487,1.5384,-4.4822,-10.2225],[null,13.0682,3.06819,.0578885,-5.96271,-11.703]]],margin_high_db:[[[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,25.6418,15.6418,12.6315,6.61086,.870552],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,22.266,12.266,9.25568,3.23508,-2.50523],[null,19.467,9.46704,6.45674,.436137,-5.30418],[null,16.506,6.50601,3.49571,-2.52489,-8.2652],[null,14.6511,4.65109,1.64079,-4.37981,-10.1201],[null,11.9348,1.93478,-1.07552,-7.09612,-12.8364],[null,9.99454,-.00545572,-3.01576,-9.03636,-14.7767]],[[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.7169,17.7169,14.7066,8.68599,2.94568],[null,27.1799,17.1799,14.1696,8.14899,2.40868],[null,26.8001,16.8001,13.7898,7.76925,2.02893],[null,26.4495,16.4495,13.4392,7.41857,1.67825],[null,26.0513,16.0513,13.041,7.02045,1.28013],[null,24.7457,14.7457,11.7354,5.71485,-.0254649],[null,22.266,12.266,9.25568,3.23508,-2.50523],[null,19.467,9.46704,6.45674,.436137,-5.30418],[null,16.506,6.50601,3.49571,-2.52489,-8.2652],[null,14.6511,4.65109,1.64079,-4.37981,-10.1201],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.4003,17.4003,14.39,8.36936,2.62905],[null,26.8854,16.8854,13.8751,7.85446,2.11414],[null,26.5227,16.5227,13.5124,7.49181,1.7515],[null,26.189,16.189,13.1787,7.15809,1.41777],[null,25.8115,15.8115,12.8012,6.78064,1.04033],[null,24.5856,14.5856,11.5753,5.55468,-.185633],[null,22.317,12.317,9.30674,3.28614,-2.45417],[null,19.8731,9.87306,6.86276,.842159,-4.89815],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.7169,17.7169,14.7066,8.68599,2.94568],[null,27.1799,17.1799,14.1696,8.14899,2.40868],[null,26.8001,16.8001,13.7898,7.76925,2.02893],[null,26.4495,16.4495,13.4392,7.41857,1.67825],[null,26.0513,16.0513,13.041,7.02045,1.28013],[null,24.7457,14.7457,11.7354,5.71485,-.0254649],[null,22.266,12.266,9.25568,3.23508,-2.50523],[null,19.467,9.46704,6.45674,.436137,-5.30418],[null,16.506,6.50601,3.49571,-2.52489,-8.2652],[null,14.6511,4.65109,1.64079,-4.37981,-10.1201],[null,11.9348,1.93478,-1.07552,-7.09612,-12.8364],[null,9.99454,-.00545572,-3.01576,-9.03636,-14.7767]],[[null,34.0106,24.0106,21.0003,14.9797,9.23941],[null,34.0106,24.0106,21.0003,14.9797,9.23941],[null,34.0106,24.0106,21.0003,14.9797,9.23941],[null,34.0106,24.0106,21.0003,14.9797,9.23941],[null,34.0106,24.0106,21.0003,14.9797,9.23941],[null,33.726,23.726,20.7157,14.6951,8.95476],[null,33.336,23.336,20.3257,14.3051,8.5648],[null,32.9753,22.9753,19.965,13.9444,8.20406],[null,32.565,22.565,19.5547,13.5341,7.79375],[null,31.2133,21.2133,18.203,12.1824,6.44205],[null,28.6174,18.6174,15.6071,9.58652,3.84621],[null,25.6418,15.6418,12.6315,6.61086,.870552],[null,22.4542,12.4542,9.44386,3.42326,-2.31705],[null,20.4487,10.4487,7.43838,1.41778,-4.32254],[null,17.5178,7.51776,4.50746,-1.51314,-7.25345],[null,15.437,5.43699,2.42669,-3.59391,-9.33422]],[[null,34.0106,24.0106,21.0003,14.9797,9.23941],[null,33.3508,23.3508,20.3405,14.3199,8.57961],[null,31.9588,21.9588,18.9485,12.9279,7.1876],[null,31.2102,21.2102,18.1999,12.1793,6.43901],[null,30.4548,20.4548,17.4445,11.4239,5.68359],[null,29.9398,19.9398,16.9295,10.9089,5.16856],[null,29.577,19.577,16.5667,10.5461,4.80582],[null,29.2432,19.2432,16.2329,10.2123,4.47199],[null,28.8656,18.8656,15.8553,9.83474,4.09443],[null,27.6392,17.6392,14.6289,8.60832,2.86801],[null,25.3694,15.3694,12.3591,6.33852,.598202],[null,22.9232,12.9232,9.91286,3.89226,-1.84805],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[null,37.5324,27.5324,24.5221,18.5015,12.7612],[null,37.3123,27.3123,24.302,18.2814,12.5411],[null,35.8638,25.8638,22.8535,16.8329,11.0926],[null,35.077,25.077,22.0667,16.0461,10.3058],[null,34.2763,24.2763,21.266,15.2454,9.50506],[null,33.726,23.726,20.7157,14.6951,8.95476],[null,33.336,23.336,20.3257,14.3051,8.5648],[null,32.9753,22.9753,19.965,13.9444,8.20406],[null,32.565,22.565,19.5547,13.5341,7.79375],[null,31.2133,21.2133,18.203,12.1824,6.44205],[null,28.6174,18.6174,15.6071,9.58652,3.84621],[null,25.6418,15.6418,12.6315,6.61086,.870552],[null,22.4542,12.4542,9.44386,3.42326,-2.31705],[null,20.4487,10.4487,7.43838,1.41778,-4.32254],[null,17.5178,7.51776,4.50746,-1.51314,-7.25345],[null,15.437,5.43699,2.42669,-3.59391,-9.33422]],[[null,38.7509,28.7509,25.7406,19.72,13.9797],[null,37.3123,27.3123,24.302,18.2814,12.5411],[null,35.8638,25.8638,22.8535,16.8329,11.0926],[null,35.077,25.077,22.0667,16.0461,10.3058],[null,34.2763,24.2763,21.266,15.2454,9.50506],[null,33.726,23.726,20.7157,14.6951,8.95476],[null,33.336,23.336,20.3257,14.3051,8.5648],[null,32.9753,22.9753,19.965,13.9444,8.20406],[null,32.565,22.565,19.5547,13.5341,7.79375],[null,31.2133,21.2133,18.203,12.1824,6.44205],[null,28.6174,18.6174,15.6071,9.58652,3.84621],[null,25.6418,15.6418,12.6315,6.61086,.870552],[null,22.4542,12.4542,9.44386,3.42326,-2.31705],[null,20.4487,10.4487,7.43838,1.41778,-4.32254],[null,17.5178,7.51776,4.50746,-1.51314,-7.25345],[null,null,null,null,null,null]],[[null,42.6379,32.6379,29.6276,23.607,17.8667],[null,42.6379,32.6379,29.6276,23.607,17.8667],[null,42.6379,32.6379,29.6276,23.607,17.8667],[null,42.6379,32.6379,29.6276,23.607,17.8667],[null,42.3269,32.3269,29.3166,23.296,17.5557],[null,41.8197,31.8197,28.8094,22.7888,17.0485],[null,41.4613,31.4613,28.451,22.4304,16.6901],[null,41.1307,31.1307,28.1204,22.0998,16.3594],[null,40.7557,30.7557,27.7454,21.7248,15.9845],[null,39.5311,29.5311,26.5208,20.5002,14.7599],[null,37.2375,27.2375,24.2272,18.2066,12.4663],[null,34.7214,24.7214,21.7111,15.6905,9.95018],[null,32.1564,22.1564,19.1461,13.1255,7.38518],[null,30.5954,20.5954,17.5851,11.5645,5.82416],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.99,17.99,14.9797,8.95912,3.21881],[null,27.5709,17.5709,14.5606,8.54003,2.79972],[null,26.0787,16.0787,13.0684,7.04784,1.30753],[null,23.9647,13.9647,10.9544,4.93382,-.806492],[null,null,null,null,null,null]],[[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,24.9809,14.9809,11.9706,5.94997,.209656],[null,23.7416,13.7416,10.7313,4.71074,-1.02957],[null,21.2526,11.2526,8.24231,2.22171,-3.5186],[null,19.7583,9.75826,6.74796,.727365,-5.01295],[null,17.6402,7.64024,4.62994,-1.39066,-7.13097],[null,16.1612,6.16125,3.15095,-2.86965,-8.60997]],[[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.253,14.253,11.2427,5.22211,-.518201],[null,23.3661,13.3661,10.3558,4.3352,-1.40511],[null,22.8823,12.8823,9.872,3.8514,-1.88892],[null,22.3876,12.3876,9.3773,3.3567,-2.38362],[null,22.0458,12.0458,9.03547,3.01487,-2.72545],[null,21.8024,11.8024,8.79211,2.77151,-2.9688],[null,21.5763,11.5763,8.56603,2.54543,-3.19488],[null,21.3179,11.3179,8.3076,2.287,-3.45331],[null,20.4243,10.4243,7.41401,1.39341,-4.3469],[null,17.949,7.94899,4.93869,-1.08191,-6.82222],[null,15.1571,5.15707,2.14677,-3.87383,-9.61415],[null,12.2055,2.20548,-.804817,-6.82542,-12.5657],[null,10.3571,.357128,-2.65317,-8.67377,-14.4141],[null,7.65059,-2.34941,-5.35971,-11.3803,-17.1206],[null,5.71705,-4.28295,-7.29325,-13.3139,-19.0542]],[[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,23.2779,13.2779,10.2676,4.24701,-1.4933],[null,20.8008,10.8008,7.79054,1.76994,-3.97038],[null,18.3135,8.31348,5.30318,-.717424,-6.45774],[null,16.8205,6.82054,3.81024,-2.21036,-7.95068],[null,14.7051,4.70512,1.69482,-4.32578,-10.0661],[null,null,null,null,null,null]],[[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,23.2779,13.2779,10.2676,4.24701,-1.4933],[null,20.8008,10.8008,7.79054,1.76994,-3.97038],[null,18.3135,8.31348,5.30318,-.717424,-6.45774],[null,16.8205,6.82054,3.81024,-2.21036,-7.95068],[null,14.7051,4.70512,1.69482,-4.32578,-10.0661],[null,null,null,null,null,null]],[[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,18.6196,8.6196,5.6093,-.411298,-6.15161],[null,17.9514,7.95135,4.94105,-1.07955,-6.81986],[null,16.4584,6.45841,3.44812,-2.57248,-8.3128],[null,14.343,4.34299,1.33269,-4.68791,-10.4282],[null,null,null,null,null,null]],[[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null],[null,null,null,null,null,null]],[[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,24.5115,14.5115,11.5012,5.48062,-.259693],[null,23.6571,13.6571,10.6468,4.6262,-1.11411],[null,21.1843,11.1843,8.17396,2.15336,-3.58696],[null,19.6961,9.69614,6.68584,.665236,-5.07508],[null,17.5842,7.58416,4.57386,-1.44674,-7.18705],[null,16.1081,6.10812,3.09782,-2.92278,-8.66309]],[[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.9694,11.9694,8.95912,2.93852,-2.80179],[null,21.1522,11.1522,8.14188,2.12128,-3.61903],[null,19.6643,9.66427,6.65397,.633371,-5.10694],[null,17.5527,7.55269,4.54239,-1.47821,-7.21852],[null,16.077,6.07698,3.06668,-2.95392,-8.69423]]],binding:[[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,1,1,1,1,1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0]],[[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,-1,-1,-1,-1,-1]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,-1,-1,-1,-1,-1]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0]],[[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,-1,-1,-1,-1,-1]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,-1,-1,-1,-1,-1]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,-1,-1,-1,-1,-1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,1,1,1,1,1],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0],[-1,0,0,0,0,0]],[[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,2,2,2,2,2],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,1,1,1,1,1],[-1,1,1,1,1,1]]],refused_by:[[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[6,6,6,6,6,6],[6,6,6,6,6,6],[6,6,6,6,6,6],[0,0,0,0,0,0]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[2,2,2,2,2,2],[2,2,2,2,2,2]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[6,6,6,6,6,6],[6,6,6,6,6,6],[2,2,2,2,2,2],[2,2,2,2,2,2]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[6,6,6,6,6,6],[6,6,6,6,6,6],[2,2,2,2,2,2],[2,2,2,2,2,2]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[0,0,0,0,0,0]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[1,1,1,1,1,1],[0,0,0,0,0,0]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[1,1,1,1,1,1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[2,2,2,2,2,2]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[2,2,2,2,2,2]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[2,2,2,2,2,2]],[[-1,3,3,3,3,3],[-1,3,3,3,3,3],[-1,3,3,3,3,3],[-1,3,3,3,3,3],[-1,3,3,3,3,3],[-1,3,3,3,3,3],[-1,3,3,3,3,3],[-1,3,3,3,3,3],[-1,3,3,3,3,3],[-1,3,3,3,3,3],[-1,3,3,3,3,3],[-1,3,3,3,3,3],[6,3,3,3,3,3],[6,3,3,3,3,3],[2,2,2,2,2,2],[2,2,2,2,2,2]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]],[[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1],[-1,-1,-1,-1,-1,-1]]],marks:[[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[128,128,128,128,128,128],[128,128,128,128,128,128],[128,128,128,128,128,128],[128,128,128,128,128,128],[128,128,128,128,128,128]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[128,128,128,128,128,128],[8320,8320,8320,8320,8320,8320],[8320,8320,8320,8320,8320,8320]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[128,128,128,128,128,128],[128,128,128,128,128,128]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[128,128,128,128,128,128],[128,128,128,128,128,128],[128,128,128,128,128,128],[128,128,128,128,128,128]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[8192,8192,8192,8192,8192,8192],[0,0,0,0,0,0],[128,128,128,128,128,128],[128,128,128,128,128,128],[128,128,128,128,128,128]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[128,128,128,128,128,128]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[128,128,128,128,128,128],[128,128,128,128,128,128]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[128,128,128,128,128,128]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[128,128,128,128,128,128]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[128,128,128,128,128,128]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[8320,8320,8320,8320,8320,8320],[8320,8320,8320,8320,8320,8320]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[128,128,128,128,128,128]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[8320,8320,8320,8320,8320,8320]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[128,128,128,128,128,128],[128,128,128,128,128,128],[128,128,128,128,128,128],[128,128,128,128,128,128]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0]],[[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0],[0,0,0,0,0,0]]],undecided:[[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!0,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!0,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!0],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!0,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!0,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]],[[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!0,!1],[!1,!1,!1,!1,!1,!1],[!1,!1,!1,!1,!1,!1]]],rating_below:[!1,!1,!1,!0,!1,!1,!0,!1,!1,!0,!0,!0,!1,!0,!0,!0,!0,!0,!0],contact_allowed_w:[[[11012.2,37403.6],[9423.87,26927.6],[7784.34,19290.7],[6911.99,16094.1],[6057.91,13384.4],[5498.09,11791.5],[5117.34,10778.8],[4778.08,9919.67],[4408.35,9025.39],[3320.97,6611.44],[1805.93,3636.74],[837.862,1832.93],[356.387,879.805],[208.21,554.418],[96.1117,282.323],[null,null]],[[5093.11,8150.12],[3708.02,5873.76],[2669.51,4228.97],[2234.55,3540.08],[1865.57,2955.69],[1648.52,2611.92],[1510.44,2393.23],[1393.23,2207.58],[1271.14,2014.21],[940.954,1491.23],[531.405,842.497],[278.784,442.256],[140.868,223.651],[91.8496,145.908],[49.1002,78.0634],[31.3915,49.9372]],[[5145.32,8150.12],[3708.02,5873.76],[2669.51,4228.97],[2234.55,3540.08],[1865.57,2955.69],[1648.52,2611.92],[1510.44,2393.23],[1393.23,2207.58],[1271.14,2014.21],[940.954,1491.23],[531.405,842.497],[278.784,442.256],[140.868,223.651],[91.8496,145.908],[null,null],[null,null]],[[3587.35,4908.09],[3061.15,4188.22],[2612.7,3574.72],[2389.81,3269.81],[2008.32,2747.87],[1783.77,2440.65],[1640.86,2245.13],[1519.48,2079.07],[1392.98,1906.01],[1050.35,1437.24],[622.932,852.46],[354.789,485.597],[202.538,277.288],[145.11,198.713],[null,null],[null,null]],[[5145.32,8150.12],[3708.02,5873.76],[2669.51,4228.97],[2234.55,3540.08],[1865.57,2955.69],[1648.52,2611.92],[1510.44,2393.23],[1393.23,2207.58],[1271.14,2014.21],[940.954,1491.23],[531.405,842.497],[278.784,442.256],[140.868,223.651],[91.8496,145.908],[49.1002,78.0634],[31.3915,49.9372]],[[26436.6,36474.8],[19286.6,26545.4],[13980.8,19210.5],[11723.5,16094.1],[9792.52,13384.4],[8649.91,11791.5],[7906.6,10778.8],[7275.93,9919.67],[6619.5,9025.39],[4847.68,6611.44],[2664.72,3636.74],[1341.67,1832.93],[643.199,879.805],[404.999,554.418],[206.013,282.323],[127.504,174.851]],[[10776.8,14919],[8010.34,10815.6],[5859.48,7849.67],[4931.69,6606.82],[4144.26,5552.01],[3680.78,4931.14],[3385.8,4536],[3135.28,4200.4],[2874.19,3850.65],[2166.98,2903.3],[1284.78,1721.52],[731.339,980.136],[417.122,559.202],[298.619,400.444],[null,null],[null,null]],[[27313.6,37502.4],[19761.6,26927.6],[14155.1,19290.7],[11808.5,16094.1],[9819.25,13384.4],[8649.94,11791.5],[7906.6,10778.8],[7275.93,9919.67],[6619.5,9025.39],[4847.68,6611.44],[2664.72,3636.74],[1341.67,1832.93],[643.199,879.805],[404.999,554.418],[206.013,282.323],[127.504,174.851]],[[27525,37502.4],[19761.6,26927.6],[14155.1,19290.7],[11808.5,16094.1],[9819.25,13384.4],[8649.94,11791.5],[7906.6,10778.8],[7275.93,9919.67],[6619.5,9025.39],[4847.68,6611.44],[2664.72,3636.74],[1341.67,1832.93],[643.199,879.805],[404.999,554.418],[206.013,282.323],[null,null]],[[129650,221140],[95036.8,163128],[68879,119818],[57918.3,101314],[48616.1,85439.4],[43141,76022.4],[39656.6,70000.6],[36697.3,64868.7],[33613.4,59503.4],[25260.8,44882.7],[14845.3,26467.8],[8319.56,14828.9],[4627.34,8215.03],[3243.59,5734.66],[null,null],[null,null]],[[58534.6,76037.4],[43394.2,55805.5],[32006.1,40852.9],[27117.9,34503.1],[22913.8,29074.3],[20415.1,25830.7],[18815.4,23753.7],[17450.9,21989.7],[16023.2,20151.3],[12126.6,15171.9],[7196.04,8961.1],[4067.21,5066.52],[2293.06,2858.01],[1625.55,2026.96],[997.867,1245.78],[null,null]],[[8680.49,17125.8],[6430.27,12782],[4740.05,9475.89],[3993.65,8046.38],[3354.18,6800.56],[2977.8,6037.6],[2738.26,5552.04],[2534.81,5139.64],[2322.8,4709.87],[1748.53,3545.79],[1032.26,2093.85],[583.145,1183.41],[328.508,667.161],[232.722,472.93],[142.734,290.398],[101.434,206.583]],[[1135.13,1629.71],[927.242,1331.29],[755.933,1085.38],[676.221,970.956],[603.394,866.422],[557.703,800.842],[527.298,757.201],[500.537,718.792],[471.605,677.267],[383.849,551.316],[217.027,311.795],[114.061,163.937],[57.7739,83.0842],[37.7333,54.2854],[20.2216,29.1091],[12.9505,18.6498]],[[5954.35,9085.14],[4471.29,6738.01],[3294.5,4887.23],[2771.68,4111.7],[2327.95,3453.51],[2066.78,3066.1],[1900.56,2819.54],[1759.39,2610.14],[1612.27,2391.91],[1213.79,1800.82],[716.763,1063.56],[405.104,601.248],[228.384,339.092],[161.895,240.449],[99.4107,147.734],[null,null]],[[5640.85,8686.47],[4251.3,6515.18],[3175.48,4848.45],[2705.34,4111.7],[2296.9,3453.51],[2052.32,3066.1],[1895.01,2819.54],[1759.39,2610.14],[1612.27,2391.91],[1213.79,1800.82],[716.763,1063.56],[405.104,601.248],[228.384,339.092],[161.895,240.449],[99.4107,147.734],[null,null]],[[4868.93,7665.09],[3700.11,5750.74],[2781.75,4280.57],[2376.68,3641.35],[2022.89,3087.6],[1810.19,2756.71],[1673.06,2544.17],[1555.5,2362.46],[1431.9,2171.9],[1091.41,1649.56],[654.684,978.473],[372.695,553.148],[210.113,311.965],[148.943,221.213],[91.4579,135.916],[null,null]],[[1603.04,2481.15],[1434.96,2135.99],[1319.86,1940.13],[1258.53,1842.42],[1197.03,1748.71],[1155.4,1687.62],[1126.23,1645.9],[1099.51,1608.44],[1069.44,1567.11],[992.257,1485.79],[656.8,907.131],[400.247,522.541],[232.853,304.001],[169.618,221.444],[null,null],[null,null]],[[8292.18,16012.4],[6154.29,11985],[4543.28,8904.87],[3850.99,7569.05],[3255.21,6413.52],[2900.93,5723.78],[2674.06,5281.04],[2480.5,4902.69],[2277.94,4506.09],[1724.87,3419.94],[1025.86,2040.24],[582.278,1160.59],[328.508,656.743],[232.722,466.212],[142.734,286.673],[101.434,204.071]],[[8247.21,15891.2],[6121.13,11894.6],[4518.91,8837.83],[3830.38,7512.13],[3237.82,6365.34],[2885.46,5680.81],[2659.8,5241.42],[2467.29,4865.92],[2265.82,4472.31],[1715.71,3394.35],[1020.44,2025.02],[579.215,1151.98],[327.217,651.91],[232.073,462.804],[142.508,284.603],[101.342,202.613]]],cable_allowed_w:[[[27525,37502.4],[19761.6,26927.6],[14155.1,19290.7],[11808.5,16094.1],[9819.25,13384.4],[8649.94,11791.5],[7906.6,10778.8],[7275.93,9919.67],[6619.5,9025.39],[4847.68,6611.44],[2664.72,3636.74],[1341.67,1832.93],[643.199,879.805],[404.999,554.418],[206.013,282.323],[null,null]],[[5145.32,8150.12],[3708.02,5873.76],[2669.51,4228.97],[2234.55,3540.08],[1865.57,2955.69],[1648.52,2611.92],[1510.44,2393.23],[1393.23,2207.58],[1271.14,2014.21],[940.954,1491.23],[531.405,842.497],[278.784,442.256],[140.868,223.651],[91.8496,145.908],[49.1002,78.0634],[31.3915,49.9372]],[[5145.32,8150.12],[3708.02,5873.76],[2669.51,4228.97],[2234.55,3540.08],[1865.57,2955.69],[1648.52,2611.92],[1510.44,2393.23],[1393.23,2207.58],[1271.14,2014.21],[940.954,1491.23],[531.405,842.497],[278.784,442.256],[140.868,223.651],[91.8496,145.908],[null,null],[null,null]],[[3587.35,4908.09],[3061.15,4188.22],[2612.7,3574.72],[2389.81,3269.81],[2008.32,2747.87],[1783.77,2440.65],[1640.86,2245.13],[1519.48,2079.07],[1392.98,1906.01],[1050.35,1437.24],[622.932,852.46],[354.789,485.597],[202.538,277.288],[145.11,198.713],[null,null],[null,null]],[[5145.32,8150.12],[3708.02,5873.76],[2669.51,4228.97],[2234.55,3540.08],[1865.57,2955.69],[1648.52,2611.92],[1510.44,2393.23],[1393.23,2207.58],[1271.14,2014.21],[940.954,1491.23],[531.405,842.497],[278.784,442.256],[140.868,223.651],[91.8496,145.908],[49.1002,78.0634],[31.3915,49.9372]],[[27525,37502.4],[19761.6,26927.6],[14155.1,19290.7],[11808.5,16094.1],[9819.25,13384.4],[8649.94,11791.5],[7906.6,10778.8],[7275.93,9919.67],[6619.5,9025.39],[4847.68,6611.44],[2664.72,3636.74],[1341.67,1832.93],[643.199,879.805],[404.999,554.418],[206.013,282.323],[127.504,174.851]],[[11136.8,14919],[8073.61,10815.6],[5859.48,7849.67],[4931.69,6606.82],[4144.26,5552.01],[3680.78,4931.14],[3385.8,4536],[3135.28,4200.4],[2874.19,3850.65],[2166.98,2903.3],[1284.78,1721.52],[731.339,980.136],[417.122,559.202],[298.619,400.444],[null,null],[null,null]],[[27525,37502.4],[19761.6,26927.6],[14155.1,19290.7],[11808.5,16094.1],[9819.25,13384.4],[8649.94,11791.5],[7906.6,10778.8],[7275.93,9919.67],[6619.5,9025.39],[4847.68,6611.44],[2664.72,3636.74],[1341.67,1832.93],[643.199,879.805],[404.999,554.418],[206.013,282.323],[127.504,174.851]],[[27525,37502.4],[19761.6,26927.6],[14155.1,19290.7],[11808.5,16094.1],[9819.25,13384.4],[8649.94,11791.5],[7906.6,10778.8],[7275.93,9919.67],[6619.5,9025.39],[4847.68,6611.44],[2664.72,3636.74],[1341.67,1832.93],[643.199,879.805],[404.999,554.418],[206.013,282.323],[null,null]],[[131227,236566],[95036.8,171330],[68879,124178],[57918.3,104420],[48616.1,87652.4],[43141,77782.9],[39656.6,71501.9],[36697.3,66167.4],[33613.4,60608.2],[25260.8,45551.7],[14845.3,26776.3],[8319.56,15012.1],[4627.34,8355.22],[3243.59,5859.86],[null,null],[null,null]],[[83907.1,104444],[60800.8,75684.2],[44099.4,54896.1],[37101,46185.3],[31161.5,38792.4],[27665.5,34440.9],[25440.6,31671.6],[23551,29319.5],[21581.7,26868.4],[16247.7,20229.2],[9594.71,11948.1],[5422.94,6755.36],[3057.41,3810.67],[2167.39,2702.61],[1330.97,1661.04],[null,null]],[[9032.92,18311.7],[6545.23,13269],[4747.11,9624.11],[3993.65,8096.79],[3354.18,6800.56],[2977.8,6037.6],[2738.26,5552.04],[2534.81,5139.64],[2322.8,4709.87],[1748.53,3545.79],[1032.26,2093.85],[583.145,1183.41],[328.508,667.161],[232.722,472.93],[142.734,290.398],[101.434,206.583]],[[1135.13,1629.71],[927.242,1331.29],[755.933,1085.38],[676.221,970.956],[603.394,866.422],[557.703,800.842],[527.298,757.201],[500.537,718.792],[471.605,677.267],[383.849,551.316],[217.027,311.795],[114.061,163.937],[57.7739,83.0842],[37.7333,54.2854],[20.2216,29.1091],[12.9505,18.6498]],[[8023.57,11902.1],[5814.03,8624.65],[4216.97,6255.66],[3547.75,5262.98],[2979.78,4420.49],[2645.48,3924.61],[2432.72,3609.02],[2252.02,3340.98],[2063.71,3061.65],[1553.65,2305.05],[917.457,1361.35],[518.533,769.598],[292.331,434.038],[207.225,307.775],[127.246,189.1],[null,null]],[[8023.57,11902.1],[5814.03,8624.65],[4216.97,6255.66],[3547.75,5262.98],[2979.78,4420.49],[2645.48,3924.61],[2432.72,3609.02],[2252.02,3340.98],[2063.71,3061.65],[1553.65,2305.05],[917.457,1361.35],[518.533,769.598],[292.331,434.038],[207.225,307.775],[127.246,189.1],[null,null]],[[8023.57,11902.1],[5814.03,8624.65],[4216.97,6255.66],[3547.75,5262.98],[2979.78,4420.49],[2645.48,3924.61],[2432.72,3609.02],[2252.02,3340.98],[2063.71,3061.65],[1553.65,2305.05],[917.457,1361.35],[518.533,769.598],[292.331,434.038],[207.225,307.775],[127.246,189.1],[null,null]],[[1900.47,2481.15],[1636.09,2135.99],[1486.07,1940.13],[1411.22,1842.42],[1339.45,1748.71],[1292.65,1687.62],[1260.7,1645.9],[1232,1608.44],[1200.35,1567.11],[1138.06,1485.79],[694.829,907.131],[400.247,522.541],[232.853,304.001],[169.618,221.444],[null,null],[null,null]],[[9032.92,18311.7],[6545.23,13269],[4747.11,9624.11],[3993.65,8096.79],[3354.18,6800.56],[2977.8,6037.6],[2738.26,5552.04],[2534.81,5139.64],[2322.8,4709.87],[1748.53,3545.79],[1032.26,2093.85],[583.145,1183.41],[328.508,667.161],[232.722,472.93],[142.734,290.398],[101.434,206.583]],[[9032.92,18311.7],[6545.23,13269],[4747.11,9624.11],[3993.65,8096.79],[3354.18,6800.56],[2977.8,6037.6],[2738.26,5552.04],[2534.81,5139.64],[2322.8,4709.87],[1748.53,3545.79],[1032.26,2093.85],[583.145,1183.41],[328.508,667.161],[232.722,472.93],[142.734,290.398],[101.434,206.583]]],voltage_allowed_w:[[[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[null,null]],[[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93]],[[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[null,null],[null,null]],[[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[null,null],[null,null]],[[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55],[1574.19,3147.55]],[[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2],[12590.2,12590.2]],[[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[7081.98,12590.2],[null,null],[null,null]],[[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9],[12590.2,28327.9]],[[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[28327.9,154230],[null,null]],[[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[91782.5,91782.5],[null,null],[null,null]],[[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[3147.55,3147.55],[null,null]],[[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19],[1412.93,1574.19]],[[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93]],[[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[null,null]],[[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[1412.93,1412.93],[null,null]],[[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[363.857,363.857],[null,null]],[[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[101.981,1133.12],[null,null],[null,null]],[[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93],[786.887,1412.93]],[[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887],[363.857,786.887]]],return_loss_db:[[[61.33,65.6688],[55.7549,60.0938],[50.204,54.5428],[47.2215,51.5602],[44.214,48.5526],[42.1652,46.5037],[40.7231,45.0614],[39.3967,43.7349],[37.8975,42.2354],[33.0368,37.3726],[24.1129,28.428],[14.9213,19.0514],[8.48852,11.336],[8.28024,10.1118],[8.28024,10.1118],[null,null]],[[73.6601,87.1073],[68.085,81.5323],[62.5341,75.9813],[59.5514,72.9986],[56.5437,69.9909],[54.4947,67.9419],[53.0523,66.4995],[51.7256,65.1727],[50.2259,63.673],[45.3616,58.8084],[36.4012,49.8448],[26.8802,40.2949],[17.9978,31.1652],[14.0066,26.4869],[13.1708,24.1807],[13.1708,24.1807]],[[74.0304,82.8473],[68.4553,77.2723],[62.9044,71.7213],[59.9218,68.7387],[56.9141,65.731],[54.8651,63.682],[53.4228,62.2397],[52.0962,60.9131],[50.5966,59.4135],[45.7333,54.5501],[36.7825,45.5986],[27.3506,36.1605],[19.2688,28.0408],[17.6921,26.4444],[null,null],[null,null]],[[61.406,62.9933],[55.831,57.4182],[50.2801,51.8673],[47.2975,48.8847],[44.2899,45.8771],[42.241,43.8282],[40.7988,42.386],[39.4723,41.0594],[37.9729,39.56],[33.1109,34.6975],[24.1738,25.756],[14.8623,16.406],[7.45327,8.79472],[6.18818,7.44326],[null,null],[null,null]],[[74.0304,81.3419],[68.4553,75.7669],[62.9044,70.2159],[59.9218,67.2333],[56.9141,64.2257],[54.8651,62.1767],[53.4228,60.7344],[52.0962,59.4077],[50.5966,57.9081],[45.7333,53.0447],[36.7825,44.0933],[27.3506,34.6556],[19.2688,26.5383],[17.6921,24.9431],[17.6921,24.9431],[17.6921,24.9431]],[[72.4468,79.7583],[66.8717,74.1833],[61.3208,68.6323],[58.3382,65.6497],[55.3306,62.6421],[53.2816,60.5932],[51.8394,59.1509],[50.5128,57.8243],[49.0133,56.3248],[44.1507,51.4621],[35.207,42.5175],[25.8413,33.1437],[18.3664,25.6261],[17.6921,24.9431],[17.6921,24.9431],[17.6921,24.9431]],[[59.8224,61.4097],[54.2474,55.8346],[48.6965,50.2837],[45.7139,47.3012],[42.7064,44.2936],[40.6576,42.2448],[39.2155,40.8026],[37.8891,39.4762],[36.3899,37.9769],[31.5292,33.1155],[22.6052,24.1852],[13.4084,14.9346],[6.71802,8.01257],[6.18818,7.44326],[null,null],[null,null]],[[70.7112,77.3743],[65.1361,71.7993],[59.5852,66.2484],[56.6026,63.2658],[53.595,60.2582],[51.5461,58.2092],[50.1039,56.767],[48.7773,55.4405],[47.2779,53.941],[42.4156,49.0786],[33.4755,40.1372],[24.1433,30.7933],[16.9645,23.5586],[16.54,23.1269],[16.54,23.1269],[16.54,23.1269]],[[70.3935,75.8817],[64.8185,70.3066],[59.2676,64.7557],[56.285,61.7731],[53.2775,58.7656],[51.2286,56.7168],[49.7865,55.2746],[48.46,53.9481],[46.9608,52.4488],[42.0995,47.5874],[33.1699,38.6565],[23.9356,29.4111],[17.7179,23.153],[17.6921,23.1269],[17.6921,23.1269],[null,null]],[[83.5537,92.4636],[77.9725,86.8823],[72.4101,81.3198],[69.4176,78.3271],[66.396,75.3053],[64.3344,73.2435],[62.8813,71.7902],[61.5431,70.4518],[60.0281,68.9366],[55.0937,64.001],[45.8703,54.7726],[35.8661,44.7521],[28.7283,37.566],[26.5275,35.3043],[null,null],[null,null]],[[85.4093,91.533],[79.8328,85.9564],[74.2791,80.4027],[71.2941,77.4177],[68.2831,74.4067],[66.2311,72.3546],[64.7863,70.9097],[63.4569,69.5803],[61.9537,68.0771],[57.0736,63.1968],[48.061,54.1832],[38.5282,44.6469],[31.0948,37.2026],[30.1378,36.2333],[28.17,34.2297],[null,null]],[[82.3708,90.7811],[76.7948,85.205],[71.242,79.6521],[68.2577,76.6678],[65.2478,73.6578],[63.1967,71.6066],[61.7525,70.1624],[60.4239,68.8337],[58.9217,67.3313],[54.0455,62.4546],[45.0361,53.443],[35.3733,43.7725],[26.1877,34.5597],[22.1577,30.4904],[20.4998,28.7483],[18.9321,27.0701]],[[82.3697,87.2158],[76.7927,81.6387],[71.2381,76.0839],[68.2522,73.098],[65.24,70.0857],[63.1868,68.0324],[61.741,66.5864],[60.4104,65.2557],[58.9057,63.7508],[54.0175,58.862],[44.9583,49.7997],[35.1458,39.9775],[25.571,30.3695],[21.1134,25.8636],[18.5788,23.2173],[16.3322,20.8279]],[[81.9871,88.6146],[76.4102,83.0376],[70.8558,77.4829],[67.8701,74.497],[64.8581,71.4847],[62.8051,69.4315],[61.3594,67.9855],[60.029,66.6549],[58.5244,65.15],[53.637,60.2611],[44.5777,51.1954],[34.731,41.3284],[24.7521,31.284],[18.9515,25.3811],[13.5253,19.6583],[null,null]],[[97.0092,102.905],[91.424,97.3196],[85.854,91.7493],[82.8548,88.7499],[79.8236,85.7184],[77.7533,83.6478],[76.2927,82.1869],[74.9463,80.8403],[73.4205,79.3141],[68.4337,74.3255],[58.9729,64.8572],[48.0257,53.887],[35.6935,41.4888],[27.7531,33.4615],[17.9496,23.3962],[null,null]],[[95.2348,101.053],[89.6523,95.4705],[84.0872,89.9051],[81.0924,86.91],[78.0674,83.8846],[76.0026,81.8195],[74.5467,80.3633],[73.2055,79.0217],[71.6864,77.5022],[66.7311,72.5447],[57.3944,63.1993],[46.7627,52.5405],[34.9665,40.6671],[27.2882,32.8885],[16.8538,22.1507],[null,null]],[[65.3914,65.4342],[59.815,59.858],[54.2616,54.3051],[51.2768,51.3207],[48.2662,48.3106],[46.2144,46.2594],[44.7697,44.8152],[43.4405,43.4865],[41.9376,41.9841],[37.0581,37.1077],[28.0405,28.1025],[18.4084,18.5067],[9.74317,9.91866],[6.85826,7.09739],[null,null],[null,null]],[[100.562,104.477],[94.9843,98.8987],[89.4275,93.3419],[86.4398,90.3541],[83.4249,87.3392],[81.3693,85.2836],[79.9213,83.8356],[78.5885,82.5028],[77.0807,80.995],[72.1784,76.0924],[63.0589,66.9724],[53.0552,56.9669],[42.8773,46.7836],[37.4223,41.3213],[33.4573,37.3353],[30.4379,34.2877]],[[94.0703,100.337],[88.4937,94.7599],[82.9398,89.206],[79.9547,86.2208],[76.9434,83.2095],[74.8911,81.1572],[73.4459,79.712],[72.1162,78.3822],[70.6125,76.8785],[65.7292,71.9949],[56.6877,62.9524],[46.9048,53.1664],[37.1859,43.438],[31.9383,38.1769],[28.3781,34.5794],[26.2402,32.3924]]],largest_power_w:[[1574.19,1574.19,1574.19,1574.19,1574.19,1574.19,1574.19,1574.19,1574.19,1574.19,1574.19,837.862,null,null,null,null],[786.887,786.887,786.887,786.887,786.887,786.887,786.887,786.887,786.887,786.887,531.405,278.784,140.868,91.8496,49.1002,31.3915],[1574.19,1574.19,1574.19,1574.19,1574.19,1574.19,1510.44,1393.23,1271.14,940.954,531.405,278.784,140.868,91.8496,null,null],[1574.19,1574.19,1574.19,1574.19,1574.19,1574.19,1574.19,1519.48,1392.98,1050.35,622.932,354.789,null,null,null,null],[1574.19,1574.19,1574.19,1574.19,1574.19,1574.19,1510.44,1393.23,1271.14,940.954,531.405,278.784,140.868,91.8496,49.1002,31.3915],[12590.2,12590.2,12590.2,11723.5,9792.52,8649.91,7906.6,7275.93,6619.5,4847.68,2664.72,1341.67,643.199,404.999,206.013,127.504],[7081.98,7081.98,5859.48,4931.69,4144.26,3680.78,3385.8,3135.28,2874.19,2166.98,1284.78,731.339,null,null,null,null],[12590.2,12590.2,12590.2,11808.5,9819.25,8649.94,7906.6,7275.93,6619.5,4847.68,2664.72,1341.67,643.199,404.999,206.013,127.504],[27525,19761.6,14155.1,11808.5,9819.25,8649.94,7906.6,7275.93,6619.5,4847.68,2664.72,1341.67,643.199,404.999,206.013,null],[91782.5,91782.5,68879,57918.3,48616.1,43141,39656.6,36697.3,33613.4,25260.8,14845.3,8319.56,4627.34,3243.59,null,null],[3147.55,3147.55,3147.55,3147.55,3147.55,3147.55,3147.55,3147.55,3147.55,3147.55,3147.55,3147.55,2293.06,1625.55,997.867,null],[1412.93,1412.93,1412.93,1412.93,1412.93,1412.93,1412.93,1412.93,1412.93,1412.93,1032.26,583.145,328.508,232.722,142.734,101.434],[1135.13,927.242,755.933,676.221,603.394,557.703,527.298,500.537,471.605,383.849,217.027,114.061,57.7739,37.7333,20.2216,12.9505],[1412.93,1412.93,1412.93,1412.93,1412.93,1412.93,1412.93,1412.93,1412.93,1213.79,716.763,405.104,228.384,161.895,99.4107,null],[1412.93,1412.93,1412.93,1412.93,1412.93,1412.93,1412.93,1412.93,1412.93,1213.79,716.763,405.104,228.384,161.895,99.4107,null],[363.857,363.857,363.857,363.857,363.857,363.857,363.857,363.857,363.857,363.857,363.857,363.857,210.113,148.943,91.4579,null],[null,null,null,null,null,null,null,null,null,null,null,null,null,null,null,null],[786.887,786.887,786.887,786.887,786.887,786.887,786.887,786.887,786.887,786.887,786.887,582.278,328.508,232.722,142.734,101.434],[363.857,363.857,363.857,363.857,363.857,363.857,363.857,363.857,363.857,363.857,363.857,363.857,327.217,232.073,142.508,101.342]]}};/**
 * @license
 * Copyright 2021 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var $t=class extends Event{constructor(e,t,n,a){super("context-request",{bubbles:!0,composed:!0}),this.context=e,this.contextTarget=t,this.callback=n,this.subscribe=a??!1}};/**
 * @license
 * Copyright 2021 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 *//**
 * @license
 * Copyright 2021 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var Ce=class{constructor(e,t,n,a){if(this.subscribe=!1,this.provided=!1,this.value=void 0,this.t=(i,r)=>{this.unsubscribe&&(this.unsubscribe!==r&&(this.provided=!1,this.unsubscribe()),this.subscribe||this.unsubscribe()),this.value=i,this.host.requestUpdate(),this.provided&&!this.subscribe||(this.provided=!0,this.callback&&this.callback(i,r)),this.unsubscribe=r},this.host=e,t.context!==void 0){let i=t;this.context=i.context,this.callback=i.callback,this.subscribe=i.subscribe??!1}else this.context=t,this.callback=n,this.subscribe=a??!1;this.host.addController(this)}hostConnected(){this.dispatchRequest()}hostDisconnected(){this.unsubscribe&&(this.unsubscribe(),this.unsubscribe=void 0)}dispatchRequest(){this.host.dispatchEvent(new $t(this.context,this.host,this.t,this.subscribe))}};/**
 * @license
 * Copyright 2021 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var ya=class{get value(){return this.o}set value(e){this.setValue(e)}setValue(e,t=!1){let n=t||!Object.is(e,this.o);this.o=e,n&&this.updateObservers()}constructor(e){this.subscriptions=new Map,this.updateObservers=()=>{for(let[t,{disposer:n}]of this.subscriptions)t(this.o,n)},e!==void 0&&(this.value=e)}addCallback(e,t,n){if(!n)return void e(this.value);this.subscriptions.has(e)||this.subscriptions.set(e,{disposer:()=>{this.subscriptions.delete(e)},consumerHost:t});let{disposer:a}=this.subscriptions.get(e);e(this.value,a)}clearCallbacks(){this.subscriptions.clear()}};/**
 * @license
 * Copyright 2021 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var eo=class extends Event{constructor(e,t){super("context-provider",{bubbles:!0,composed:!0}),this.context=e,this.contextTarget=t}},Gt=class extends ya{constructor(e,t,n){super(t.context!==void 0?t.initialValue:n),this.onContextRequest=a=>{if(a.context!==this.context)return;let i=a.contextTarget??a.composedPath()[0];i!==this.host&&(a.stopPropagation(),this.addCallback(a.callback,i,a.subscribe))},this.onProviderRequest=a=>{if(a.context!==this.context||(a.contextTarget??a.composedPath()[0])===this.host)return;let i=new Set;for(let[r,{consumerHost:o}]of this.subscriptions)i.has(r)||(i.add(r),o.dispatchEvent(new $t(this.context,o,r,!0)));a.stopPropagation()},this.host=e,t.context!==void 0?this.context=t.context:this.context=t,this.attachListeners(),this.host.addController?.(this)}attachListeners(){this.host.addEventListener("context-request",this.onContextRequest),this.host.addEventListener("context-provider",this.onProviderRequest)}hostConnected(){this.host.dispatchEvent(new eo(this.context,this.host))}};/**
 * @license
 * Copyright 2021 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 *//**
 * @license
 * Copyright 2017 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 *//**
 * @license
 * Copyright 2022 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 *//**
 * @license
 * Copyright 2019 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var va=globalThis,$a=va.ShadowRoot&&(va.ShadyCSS===void 0||va.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,to=Symbol(),Nu=new WeakMap,gn=class{constructor(e,t,n){if(this._$cssResult$=!0,n!==to)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=e,this.t=t}get styleSheet(){let e=this.o,t=this.t;if($a&&e===void 0){let n=t!==void 0&&t.length===1;n&&(e=Nu.get(t)),e===void 0&&((this.o=e=new CSSStyleSheet).replaceSync(this.cssText),n&&Nu.set(t,e))}return e}toString(){return this.cssText}},R=s=>new gn(typeof s=="string"?s:s+"",void 0,to),b=(s,...e)=>{let t=s.length===1?s[0]:e.reduce((n,a,i)=>n+(r=>{if(r._$cssResult$===!0)return r.cssText;if(typeof r=="number")return r;throw Error("Value passed to 'css' function must be a 'css' function result: "+r+". Use 'unsafeCSS' to pass non-literal values, but take care to ensure page security.")})(a)+s[i+1],s[0]);return new gn(t,s,to)},Lu=(s,e)=>{if($a)s.adoptedStyleSheets=e.map(t=>t instanceof CSSStyleSheet?t:t.styleSheet);else for(let t of e){let n=document.createElement("style"),a=va.litNonce;a!==void 0&&n.setAttribute("nonce",a),n.textContent=t.cssText,s.appendChild(n)}},so=$a?s=>s:s=>s instanceof CSSStyleSheet?(e=>{let t="";for(let n of e.cssRules)t+=n.cssText;return R(t)})(s):s;/**
 * @license
 * Copyright 2017 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var{is:wb,defineProperty:yb,getOwnPropertyDescriptor:vb,getOwnPropertyNames:$b,getOwnPropertySymbols:xb,getPrototypeOf:kb}=Object,xa=globalThis,zu=xa.trustedTypes,Sb=zu?zu.emptyScript:"",jb=xa.reactiveElementPolyfillSupport,bn=(s,e)=>s,no={toAttribute(s,e){switch(e){case Boolean:s=s?Sb:null;break;case Object:case Array:s=s==null?s:JSON.stringify(s)}return s},fromAttribute(s,e){let t=s;switch(e){case Boolean:t=s!==null;break;case Number:t=s===null?null:Number(s);break;case Object:case Array:try{t=JSON.parse(s)}catch{t=null}}return t}},Iu=(s,e)=>!wb(s,e),Pu={attribute:!0,type:String,converter:no,reflect:!1,useDefault:!1,hasChanged:Iu};Symbol.metadata??=Symbol("metadata"),xa.litPropertyMetadata??=new WeakMap;var lt=class extends HTMLElement{static addInitializer(e){this._$Ei(),(this.l??=[]).push(e)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(e,t=Pu){if(t.state&&(t.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(e)&&((t=Object.create(t)).wrapped=!0),this.elementProperties.set(e,t),!t.noAccessor){let n=Symbol(),a=this.getPropertyDescriptor(e,n,t);a!==void 0&&yb(this.prototype,e,a)}}static getPropertyDescriptor(e,t,n){let{get:a,set:i}=vb(this.prototype,e)??{get(){return this[t]},set(r){this[t]=r}};return{get:a,set(r){let o=a?.call(this);i?.call(this,r),this.requestUpdate(e,o,n)},configurable:!0,enumerable:!0}}static getPropertyOptions(e){return this.elementProperties.get(e)??Pu}static _$Ei(){if(this.hasOwnProperty(bn("elementProperties")))return;let e=kb(this);e.finalize(),e.l!==void 0&&(this.l=[...e.l]),this.elementProperties=new Map(e.elementProperties)}static finalize(){if(this.hasOwnProperty(bn("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(bn("properties"))){let t=this.properties,n=[...$b(t),...xb(t)];for(let a of n)this.createProperty(a,t[a])}let e=this[Symbol.metadata];if(e!==null){let t=litPropertyMetadata.get(e);if(t!==void 0)for(let[n,a]of t)this.elementProperties.set(n,a)}this._$Eh=new Map;for(let[t,n]of this.elementProperties){let a=this._$Eu(t,n);a!==void 0&&this._$Eh.set(a,t)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(e){let t=[];if(Array.isArray(e)){let n=new Set(e.flat(1/0).reverse());for(let a of n)t.unshift(so(a))}else e!==void 0&&t.push(so(e));return t}static _$Eu(e,t){let n=t.attribute;return n===!1?void 0:typeof n=="string"?n:typeof e=="string"?e.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(e=>this.enableUpdating=e),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(e=>e(this))}addController(e){(this._$EO??=new Set).add(e),this.renderRoot!==void 0&&this.isConnected&&e.hostConnected?.()}removeController(e){this._$EO?.delete(e)}_$E_(){let e=new Map,t=this.constructor.elementProperties;for(let n of t.keys())this.hasOwnProperty(n)&&(e.set(n,this[n]),delete this[n]);e.size>0&&(this._$Ep=e)}createRenderRoot(){let e=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return Lu(e,this.constructor.elementStyles),e}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(e=>e.hostConnected?.())}enableUpdating(e){}disconnectedCallback(){this._$EO?.forEach(e=>e.hostDisconnected?.())}attributeChangedCallback(e,t,n){this._$AK(e,n)}_$ET(e,t){let n=this.constructor.elementProperties.get(e),a=this.constructor._$Eu(e,n);if(a!==void 0&&n.reflect===!0){let i=(n.converter?.toAttribute!==void 0?n.converter:no).toAttribute(t,n.type);this._$Em=e,i==null?this.removeAttribute(a):this.setAttribute(a,i),this._$Em=null}}_$AK(e,t){let n=this.constructor,a=n._$Eh.get(e);if(a!==void 0&&this._$Em!==a){let i=n.getPropertyOptions(a),r=typeof i.converter=="function"?{fromAttribute:i.converter}:i.converter?.fromAttribute!==void 0?i.converter:no;this._$Em=a;let o=r.fromAttribute(t,i.type);this[a]=o??this._$Ej?.get(a)??o,this._$Em=null}}requestUpdate(e,t,n,a=!1,i){if(e!==void 0){let r=this.constructor;if(a===!1&&(i=this[e]),n??=r.getPropertyOptions(e),!((n.hasChanged??Iu)(i,t)||n.useDefault&&n.reflect&&i===this._$Ej?.get(e)&&!this.hasAttribute(r._$Eu(e,n))))return;this.C(e,t,n)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(e,t,{useDefault:n,reflect:a,wrapped:i},r){n&&!(this._$Ej??=new Map).has(e)&&(this._$Ej.set(e,r??t??this[e]),i!==!0||r!==void 0)||(this._$AL.has(e)||(this.hasUpdated||n||(t=void 0),this._$AL.set(e,t)),a===!0&&this._$Em!==e&&(this._$Eq??=new Set).add(e))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(t){Promise.reject(t)}let e=this.scheduleUpdate();return e!=null&&await e,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[a,i]of this._$Ep)this[a]=i;this._$Ep=void 0}let n=this.constructor.elementProperties;if(n.size>0)for(let[a,i]of n){let{wrapped:r}=i,o=this[a];r!==!0||this._$AL.has(a)||o===void 0||this.C(a,void 0,i,o)}}let e=!1,t=this._$AL;try{e=this.shouldUpdate(t),e?(this.willUpdate(t),this._$EO?.forEach(n=>n.hostUpdate?.()),this.update(t)):this._$EM()}catch(n){throw e=!1,this._$EM(),n}e&&this._$AE(t)}willUpdate(e){}_$AE(e){this._$EO?.forEach(t=>t.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(e)),this.updated(e)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(e){return!0}update(e){this._$Eq&&=this._$Eq.forEach(t=>this._$ET(t,this[t])),this._$EM()}updated(e){}firstUpdated(e){}};lt.elementStyles=[],lt.shadowRootOptions={mode:"open"},lt[bn("elementProperties")]=new Map,lt[bn("finalized")]=new Map,jb?.({ReactiveElement:lt}),(xa.reactiveElementVersions??=[]).push("2.1.2");/**
 * @license
 * Copyright 2017 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var io=globalThis,Wu=s=>s,ka=io.trustedTypes,Bu=ka?ka.createPolicy("lit-html",{createHTML:s=>s}):void 0,ro="$lit$",dt=`lit$${Math.random().toFixed(9).slice(2)}$`,oo="?"+dt,Eb=`<${oo}>`,Yt=document,wn=()=>Yt.createComment(""),yn=s=>s===null||typeof s!="object"&&typeof s!="function",lo=Array.isArray,Ku=s=>lo(s)||typeof s?.[Symbol.iterator]=="function",ao=`[ 	
\f\r]`,_n=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,Hu=/-->/g,Uu=/>/g,Kt=RegExp(`>|${ao}(?:([^\\s"'>=/]+)(${ao}*=${ao}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),Fu=/'/g,Du=/"/g,Vu=/^(?:script|style|textarea|title)$/i,co=s=>(e,...t)=>({_$litType$:s,strings:e,values:t}),l=co(1),Y=co(2),P6=co(3),ct=Symbol.for("lit-noChange"),p=Symbol.for("lit-nothing"),Gu=new WeakMap,Vt=Yt.createTreeWalker(Yt,129);function Yu(s,e){if(!lo(s)||!s.hasOwnProperty("raw"))throw Error("invalid template strings array");return Bu!==void 0?Bu.createHTML(e):e}var Ju=(s,e)=>{let t=s.length-1,n=[],a,i=e===2?"<svg>":e===3?"<math>":"",r=_n;for(let o=0;o<t;o++){let d=s[o],c,h,f=-1,_=0;for(;_<d.length&&(r.lastIndex=_,h=r.exec(d),h!==null);)_=r.lastIndex,r===_n?h[1]==="!--"?r=Hu:h[1]!==void 0?r=Uu:h[2]!==void 0?(Vu.test(h[2])&&(a=RegExp("</"+h[2],"g")),r=Kt):h[3]!==void 0&&(r=Kt):r===Kt?h[0]===">"?(r=a??_n,f=-1):h[1]===void 0?f=-2:(f=r.lastIndex-h[2].length,c=h[1],r=h[3]===void 0?Kt:h[3]==='"'?Du:Fu):r===Du||r===Fu?r=Kt:r===Hu||r===Uu?r=_n:(r=Kt,a=void 0);let g=r===Kt&&s[o+1].startsWith("/>")?" ":"";i+=r===_n?d+Eb:f>=0?(n.push(c),d.slice(0,f)+ro+d.slice(f)+dt+g):d+dt+(f===-2?o:g)}return[Yu(s,i+(s[t]||"<?>")+(e===2?"</svg>":e===3?"</math>":"")),n]},vn=class s{constructor({strings:e,_$litType$:t},n){let a;this.parts=[];let i=0,r=0,o=e.length-1,d=this.parts,[c,h]=Ju(e,t);if(this.el=s.createElement(c,n),Vt.currentNode=this.el.content,t===2||t===3){let f=this.el.content.firstChild;f.replaceWith(...f.childNodes)}for(;(a=Vt.nextNode())!==null&&d.length<o;){if(a.nodeType===1){if(a.hasAttributes())for(let f of a.getAttributeNames())if(f.endsWith(ro)){let _=h[r++],g=a.getAttribute(f).split(dt),v=/([.?@])?(.*)/.exec(_);d.push({type:1,index:i,name:v[2],strings:g,ctor:v[1]==="."?ja:v[1]==="?"?Ea:v[1]==="@"?Oa:Xt}),a.removeAttribute(f)}else f.startsWith(dt)&&(d.push({type:6,index:i}),a.removeAttribute(f));if(Vu.test(a.tagName)){let f=a.textContent.split(dt),_=f.length-1;if(_>0){a.textContent=ka?ka.emptyScript:"";for(let g=0;g<_;g++)a.append(f[g],wn()),Vt.nextNode(),d.push({type:2,index:++i});a.append(f[_],wn())}}}else if(a.nodeType===8)if(a.data===oo)d.push({type:2,index:i});else{let f=-1;for(;(f=a.data.indexOf(dt,f+1))!==-1;)d.push({type:7,index:i}),f+=dt.length-1}i++}}static createElement(e,t){let n=Yt.createElement("template");return n.innerHTML=e,n}};function Jt(s,e,t=s,n){if(e===ct)return e;let a=n!==void 0?t._$Co?.[n]:t._$Cl,i=yn(e)?void 0:e._$litDirective$;return a?.constructor!==i&&(a?._$AO?.(!1),i===void 0?a=void 0:(a=new i(s),a._$AT(s,t,n)),n!==void 0?(t._$Co??=[])[n]=a:t._$Cl=a),a!==void 0&&(e=Jt(s,a._$AS(s,e.values),a,n)),e}var Sa=class{constructor(e,t){this._$AV=[],this._$AN=void 0,this._$AD=e,this._$AM=t}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(e){let{el:{content:t},parts:n}=this._$AD,a=(e?.creationScope??Yt).importNode(t,!0);Vt.currentNode=a;let i=Vt.nextNode(),r=0,o=0,d=n[0];for(;d!==void 0;){if(r===d.index){let c;d.type===2?c=new ks(i,i.nextSibling,this,e):d.type===1?c=new d.ctor(i,d.name,d.strings,this,e):d.type===6&&(c=new Ta(i,this,e)),this._$AV.push(c),d=n[++o]}r!==d?.index&&(i=Vt.nextNode(),r++)}return Vt.currentNode=Yt,a}p(e){let t=0;for(let n of this._$AV)n!==void 0&&(n.strings!==void 0?(n._$AI(e,n,t),t+=n.strings.length-2):n._$AI(e[t])),t++}},ks=class s{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(e,t,n,a){this.type=2,this._$AH=p,this._$AN=void 0,this._$AA=e,this._$AB=t,this._$AM=n,this.options=a,this._$Cv=a?.isConnected??!0}get parentNode(){let e=this._$AA.parentNode,t=this._$AM;return t!==void 0&&e?.nodeType===11&&(e=t.parentNode),e}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(e,t=this){e=Jt(this,e,t),yn(e)?e===p||e==null||e===""?(this._$AH!==p&&this._$AR(),this._$AH=p):e!==this._$AH&&e!==ct&&this._(e):e._$litType$!==void 0?this.$(e):e.nodeType!==void 0?this.T(e):Ku(e)?this.k(e):this._(e)}O(e){return this._$AA.parentNode.insertBefore(e,this._$AB)}T(e){this._$AH!==e&&(this._$AR(),this._$AH=this.O(e))}_(e){this._$AH!==p&&yn(this._$AH)?this._$AA.nextSibling.data=e:this.T(Yt.createTextNode(e)),this._$AH=e}$(e){let{values:t,_$litType$:n}=e,a=typeof n=="number"?this._$AC(e):(n.el===void 0&&(n.el=vn.createElement(Yu(n.h,n.h[0]),this.options)),n);if(this._$AH?._$AD===a)this._$AH.p(t);else{let i=new Sa(a,this),r=i.u(this.options);i.p(t),this.T(r),this._$AH=i}}_$AC(e){let t=Gu.get(e.strings);return t===void 0&&Gu.set(e.strings,t=new vn(e)),t}k(e){lo(this._$AH)||(this._$AH=[],this._$AR());let t=this._$AH,n,a=0;for(let i of e)a===t.length?t.push(n=new s(this.O(wn()),this.O(wn()),this,this.options)):n=t[a],n._$AI(i),a++;a<t.length&&(this._$AR(n&&n._$AB.nextSibling,a),t.length=a)}_$AR(e=this._$AA.nextSibling,t){for(this._$AP?.(!1,!0,t);e!==this._$AB;){let n=Wu(e).nextSibling;Wu(e).remove(),e=n}}setConnected(e){this._$AM===void 0&&(this._$Cv=e,this._$AP?.(e))}},Xt=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(e,t,n,a,i){this.type=1,this._$AH=p,this._$AN=void 0,this.element=e,this.name=t,this._$AM=a,this.options=i,n.length>2||n[0]!==""||n[1]!==""?(this._$AH=Array(n.length-1).fill(new String),this.strings=n):this._$AH=p}_$AI(e,t=this,n,a){let i=this.strings,r=!1;if(i===void 0)e=Jt(this,e,t,0),r=!yn(e)||e!==this._$AH&&e!==ct,r&&(this._$AH=e);else{let o=e,d,c;for(e=i[0],d=0;d<i.length-1;d++)c=Jt(this,o[n+d],t,d),c===ct&&(c=this._$AH[d]),r||=!yn(c)||c!==this._$AH[d],c===p?e=p:e!==p&&(e+=(c??"")+i[d+1]),this._$AH[d]=c}r&&!a&&this.j(e)}j(e){e===p?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,e??"")}},ja=class extends Xt{constructor(){super(...arguments),this.type=3}j(e){this.element[this.name]=e===p?void 0:e}},Ea=class extends Xt{constructor(){super(...arguments),this.type=4}j(e){this.element.toggleAttribute(this.name,!!e&&e!==p)}},Oa=class extends Xt{constructor(e,t,n,a,i){super(e,t,n,a,i),this.type=5}_$AI(e,t=this){if((e=Jt(this,e,t,0)??p)===ct)return;let n=this._$AH,a=e===p&&n!==p||e.capture!==n.capture||e.once!==n.once||e.passive!==n.passive,i=e!==p&&(n===p||a);a&&this.element.removeEventListener(this.name,this,n),i&&this.element.addEventListener(this.name,this,e),this._$AH=e}handleEvent(e){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,e):this._$AH.handleEvent(e)}},Ta=class{constructor(e,t,n){this.element=e,this.type=6,this._$AN=void 0,this._$AM=t,this.options=n}get _$AU(){return this._$AM._$AU}_$AI(e){Jt(this,e)}},Xu={M:ro,P:dt,A:oo,C:1,L:Ju,R:Sa,D:Ku,V:Jt,I:ks,H:Xt,N:Ea,U:Oa,B:ja,F:Ta},Ob=io.litHtmlPolyfillSupport;Ob?.(vn,ks),(io.litHtmlVersions??=[]).push("3.3.3");var Ss=(s,e,t)=>{let n=t?.renderBefore??e,a=n._$litPart$;if(a===void 0){let i=t?.renderBefore??null;n._$litPart$=a=new ks(e.insertBefore(wn(),i),i,void 0,t??{})}return a._$AI(s),a};/**
 * @license
 * Copyright 2017 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var uo=globalThis,Je=class extends lt{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let e=super.createRenderRoot();return this.renderOptions.renderBefore??=e.firstChild,e}update(e){let t=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(e),this._$Do=Ss(t,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return ct}};Je._$litElement$=!0,Je.finalized=!0,uo.litElementHydrateSupport?.({LitElement:Je});var Tb=uo.litElementPolyfillSupport;Tb?.({LitElement:Je});(uo.litElementVersions??=[]).push("4.2.2");/**
 * @license
 * Copyright 2022 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 *//**
 * @license
 * Copyright 2017 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var Qu={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},js=s=>(...e)=>({_$litDirective$:s,values:e}),xt=class{constructor(e){}get _$AU(){return this._$AM._$AU}_$AT(e,t,n){this._$Ct=e,this._$AM=t,this._$Ci=n}_$AS(e,t){return this.update(e,t)}update(e,t){return this.render(...t)}};/**
 * @license
 * Copyright 2020 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var{I:Ab}=Xu,Zu=s=>s;var ho=(s,e)=>e===void 0?s?._$litType$!==void 0:s?._$litType$===e,th=s=>s?._$litType$?.h!=null;var eh=()=>document.createComment(""),ut=(s,e,t)=>{let n=s._$AA.parentNode,a=e===void 0?s._$AB:e._$AA;if(t===void 0){let i=n.insertBefore(eh(),a),r=n.insertBefore(eh(),a);t=new Ab(i,r,s,s.options)}else{let i=t._$AB.nextSibling,r=t._$AM,o=r!==s;if(o){let d;t._$AQ?.(s),t._$AM=s,t._$AP!==void 0&&(d=s._$AU)!==r._$AU&&t._$AP(d)}if(i!==a||o){let d=t._$AA;for(;d!==i;){let c=Zu(d).nextSibling;Zu(n).insertBefore(d,a),d=c}}}return t},kt=(s,e,t=s)=>(s._$AI(e,t),s),Mb={},Qt=(s,e=Mb)=>s._$AH=e,$n=s=>s._$AH,Aa=s=>{s._$AR(),s._$AA.remove()},sh=s=>{s._$AR()};/**
 * @license
 * Copyright 2017 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var nh=s=>th(s)?s._$litType$.h:s.strings,po=js(class extends xt{constructor(s){super(s),this.et=new WeakMap}render(s){return[s]}update(s,[e]){let t=ho(this.it)?nh(this.it):null,n=ho(e)?nh(e):null;if(t!==null&&(n===null||t!==n)){let a=$n(s).pop(),i=this.et.get(t);if(i===void 0){let r=document.createDocumentFragment();i=Ss(p,r),i.setConnected(!1),this.et.set(t,i)}Qt(i,[a]),ut(i,void 0,a)}if(n!==null){if(t===null||t!==n){let a=this.et.get(n);if(a!==void 0){let i=$n(a).pop();sh(s),ut(s,void 0,i),Qt(s,[i])}}this.it=e}else this.it=void 0;return this.render(e)}});/**
 * @license
 * Copyright 2021 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var ah=js(class extends xt{constructor(){super(...arguments),this.key=p}render(s,e){return this.key=s,e}update(s,[e,t]){return e!==this.key&&(Qt(s),this.key=e),t}});function ih(s){let e=document.createComment("");s.replaceWith(e),Ss(p,s.renderRoot,s.renderOptions),e.replaceWith(s),s.requestUpdate()}var u=void 0,m=s=>({attribute:!1}),x=s=>({state:!0}),w=(s,e)=>class extends(e??Je){static properties=s};var N=(s,e)=>s.querySelector(e);var rh="unpacking",oh="starting Python",lh="loading numpy",St="ready",dh=s=>({kind:"start",names:s}),ch=(s,e)=>({kind:"part",name:s,contents:e}),uh=(s,e,t,n)=>({kind:"ask",number:s,operation:e,body:t,packs:n});var hh=s=>({kind:"unable",reason:s}),ph=s=>({kind:"died",reason:s});var qb="take over",mh=()=>({kind:qb}),Cb="started",fh=()=>({kind:Cb}),gh="took over";var bh="which build";var _h="holds everything you set.";async function wh(s){try{return await navigator.clipboard.writeText(s),!0}catch{return!1}}async function xn(s=location.href){return await wh(s)?{text:`Link copied. It ${_h}`,link:""}:{text:`Copy this link; it ${_h}`,link:s}}async function yh(s,e){let t=s.slice(s.indexOf("#")),n=async()=>{let r=await wh(t);e({text:`${r?"Copied":"Copy this"}: put it behind the address of another copy of this page.`,link:r?"":t})},{text:a,link:i}=await xn(s);return{text:`${a} This page is a file, so the link works on this device only. For others copy it as text, or give the address of the page on the web under Station.`,link:i,action:{words:"Copy as text",run:n}}}var kn={cable:"CableRun",wires:"WireRun",joint:"Joint",tuner:"Tuner",transformer:"Transformer",section:"Section",part:"Part",measured:"MeasuredPart"},Ma={vswr:"GivenVswr",resonant:"ResonantAntenna",impedance:"GivenImpedance",table:"ImpedanceTable",measured:"MeasuredLoad",dummy:"DummyLoad"},Sn=["arrester","switch","meter","attenuator","filter","divider"],qa=({kind:s,what:e})=>s==="part"&&Sn.includes(e)?e:s;var Rb={choose:"choose",line:"station",spread:"station",fitout:"fitout",sweep:"sweep",span:"sweep",kit:"kit"},vh={elements:["Element",s=>s&&qa(s)],ports:["Port",()=>"port"],owned:["Adapter",()=>"owned"]},Nb={load:"The antenna"},Lb=/_(w|hz|m|db|ohm|c|v|a|s|f|h|k|deg|w_per_m2)$/,zb=["first","second","third","fourth","fifth","sixth","seventh","eighth","ninth","tenth"],Pb=/^\w+(\[\d+\]|\.\w+)*$/;function Ca({field:s="",value:e,allowed:t,message:n},a,i,r){if(!Pb.test(s)||s==="request")return n;let{lead:o,name:d,index:c}=Ib(s,i,r),h=d.split(".").at(-1),f=a.labelOf(d)??Nb[h]??Ub(h),_=c===void 0?"":`, ${zb[c]??`${c+1}th`} entry`,g=a.fieldOf(d),v=c===void 0?g:g?.items,k=Wb(e),S=a.labelOf(d)&&v?{vocabulary:a,name:d}:void 0,E=Hb(k,v,S,t);return`${o}${f}${_}: ${Bb(k,S)}; allowed: ${E}.`}function Ib(s,e,t){let n=s.match(/\w+/g),[a,i]=n,r=/\[\d+\]$/.test(s)?Number(n.at(-1)):void 0,o=n.filter(h=>!/^\d+$/.test(h)),d=o.at(-1);if(a in vh&&/^\d+$/.test(i)&&o.length>1){let[h,f]=vh[a],_=t[a]?.[i];return{lead:`${_?.name||`${h} ${Number(i)+1}`}, `,name:`${f(_)??a}.${d}`,index:r}}if(a==="load"&&o.length>1)return{lead:"",name:`load_${t.load?.kind}.${d}`,index:r};if(o.length>1)return{lead:"",name:o.slice(-2).join("."),index:r};let c=Rb[e];return{lead:"",name:c?`${c}.${d}`:d,index:r}}function Wb(s){try{return JSON.parse(s)}catch{return String(s)}}function Bb(s,e){return s==null?"not given":typeof s=="number"?e?e.vocabulary.spoken(e.name,s):String(s):typeof s=="string"?e?.vocabulary.nameOf(e.name,s)??`“${s}”`:Array.isArray(s)&&s.length===0?"none":JSON.stringify(s)}function Hb(s,e,t,n){if(!t||s===null)return n;let{vocabulary:a,name:i}=t;if(e.type==="number")return typeof s=="number"&&s>=e.min&&s<=e.max?n:a.rangeOf(i);let r=a.namesOf(i);return typeof s=="string"&&r.length>0&&a.nameOf(i,s)===void 0?`one of ${r.join(", ")}`:n}function Ub(s){let e=s.replace(Lb,"").replaceAll("_"," ");return e.charAt(0).toUpperCase()+e.slice(1)}var pe=class{status="initial";result;answered;error;#e;#t;#s=0;#a;#n;constructor(e,t){this.#e=e,this.#t=t,e.addController(this)}hostDisconnected(){this.cancel()}async ask(e){this.cancel();let t=++this.#s;this.#a=new AbortController,this.status="pending",this.#e.requestUpdate();try{let n=await this.#t(e,{signal:this.#a.signal});if(t!==this.#s)return;Object.assign(this,{status:"complete",result:n,answered:e,error:void 0})}catch(n){if(t!==this.#s)return;Object.assign(this,{status:"error",error:n})}this.#a=void 0,this.#e.requestUpdate(),this.#i()}askNext(e){if(this.#a===void 0)return this.ask(e);this.#n=e}cancel(){this.#s++,this.#n=void 0,this.#a?.abort(),this.#a=void 0,this.status==="pending"&&(this.status=this.result===void 0?"initial":"complete")}outdate(){this.cancel(),this.status="initial"}forget(){this.cancel(),Object.assign(this,{status:"initial",result:void 0,answered:void 0,error:void 0}),this.#e.requestUpdate()}#i(){let e=this.#n;this.#n=void 0,e!==void 0&&this.ask(e)}};var Ra=s=>s.length>60?`${s.slice(0,60)}…`:s;function Es(s){let e=s.slice(0,3).map(Ra).join(", ");return s.length>3?`${e} and ${s.length-3} more`:e}var Fb=(s,e)=>JSON.stringify(s)===JSON.stringify(e);function Db(s){return Array.isArray(s)?s.join(","):String(s)}function $h(s,e){return e.type==="number"?s===""||!Number.isFinite(Number(s))?void 0:Number(s):e.type==="boolean"?{true:!0,false:!1}[s]:e.type==="choice"?e.choices.includes(s)?s:void 0:s.length>(e.longest??1/0)?void 0:s}function Gb(s,e){if(e.type!=="list")return $h(s,e);let t=e.most??1/0,n=s===""?[]:s.split(",",t+1);if(n.length<e.least||n.length>t)return;let a=n.map(i=>$h(i,e.items));return a.includes(void 0)?void 0:a}function Xe(s,e){return Object.keys(e).filter(n=>!Fb(s[n],e[n])).map(n=>`${n}=${encodeURIComponent(Db(s[n])).replaceAll("%2C",",")}`).join("&")}function Os(s,e,t){let n={...t},a=[];for(let[i,r]of new URLSearchParams(s.replaceAll("+","%2B"))){let o=Object.hasOwn(e,i)?Gb(r,e[i]):void 0;o===void 0?a.push(r===""?i:`${i}=${r}`):n[i]=o}return{state:n,unknown:a}}var xh=(s,e,t)=>[`view=${s}`,Xe(e,t)].filter(Boolean).join("&");function kh(s,e,t){let n=s.split("&").filter(a=>!a.startsWith("view="));return Os(n.join("&"),e,t)}function Ts(s,e){let t=new URLSearchParams(s.slice(0,8e3)).get("view");return e.includes(t)?t:e[0]}var Na=s=>`This link holds what the page does not know: ${Es(s)}. Everything else is restored.`,Sh=s=>s.length>8e3?{fragment:"",problem:`This link is longer than ${8e3} characters and is not read.`}:{fragment:s,problem:""};var jn=Symbol("vocabulary"),O=class extends Je{#e=new Ce(this,{context:jn,subscribe:!0});get vocabulary(){return this.#e.value}};var En=Symbol("station"),me=class extends O{#e=new Ce(this,{context:En});#t;get stationStore(){return this.#e.value}get station(){return this.stationStore.present}connectedCallback(){super.connectedCallback(),this.#t=this.stationStore.listen(e=>this._stationChanged(e))}disconnectedCallback(){super.disconnectedCallback(),this.#t?.()}_stationChanged(e){this.requestUpdate()}};var La=1500;function fo(s){let e=new TextEncoder().encode(s);return btoa(String.fromCharCode(...e)).replaceAll("+","-").replaceAll("/","_").replace(/=+$/,"")}function go(s){let e=Uint8Array.from(atob(s.replaceAll("-","+").replaceAll("_","/")),t=>t.charCodeAt(0));return new TextDecoder("utf-8",{fatal:!0}).decode(e)}function za(s,e,t,n=s){let a=JSON.stringify(t),i=a.length>La?void 0:`${s}&${e}=${fo(a)}`;return i===void 0||i.length>La?{fragment:n,whole:!1}:{fragment:i,whole:!0}}function Pa(s,{key:e,names:t,unfolded:n=o=>o,read:a,what:i,instead:r}){let o=new URLSearchParams(s),d=[...o.keys()].filter(h=>h!==e&&!t.includes(h)),c=d.length>0?`This link holds what the page does not know: ${Es(d)}.`:"";if(!o.has(e))return{document:void 0,problem:c};try{return{document:a(Kb(o.get(e),n)),problem:c}}catch(h){if(!(h instanceof RangeError))throw h;return{document:void 0,problem:`The ${i} in this link can’t be used: ${h.message} ${r}`}}}function Kb(s,e){try{return e(JSON.parse(go(s)))}catch{throw new RangeError("it is cut short or altered.")}}function P(s,e,t){let n=JSON.stringify(e)??"left out";throw new RangeError(`${Ra(s)} is ${Ra(n)}; allowed: ${t}.`)}var Vb=s=>typeof s=="object"&&s!==null&&!Array.isArray(s);function U(s,e){return Vb(e)||P(s,e,"a JSON object"),e}function X(s,e,t,n,a){return(!Array.isArray(e)||e.length<t||e.length>n)&&P(s,e,`a list of ${t} to ${n} ${a}`),e}var Yb=(s,e)=>s.length<=e||[...s].length<=e,jh={number:({min:s,max:e},t)=>typeof t=="number"&&t>=s&&t<=e,choice:({choices:s},e)=>s.includes(e),boolean:(s,e)=>typeof e=="boolean",text:({longest:s=1/0},e)=>typeof e=="string"&&Yb(e,s)},bo={number:({min:s,max:e})=>`a number from ${s} to ${e}`,choice:({choices:s})=>`one of ${s.join(", ")}`,boolean:()=>"true or false",text:({longest:s})=>s?`text of up to ${s} characters`:"text"};function ie(s,e,t,n=[]){let a=s===""?"":`${s}.`;for(let[i,r]of Object.entries(e)){if(n.includes(i))continue;Object.hasOwn(t,i)||P(`${a}${i}`,r,`only the fields ${[...n,...Object.keys(t)].join(", ")}`);let o=t[i];(r===null?!o.nullable:!jh[o.type](o,r))&&P(`${a}${i}`,r,bo[o.type](o))}for(let[i,r]of Object.entries(t))r.default===null&&!r.nullable&&!(i in e)&&P(`${a}${i}`,void 0,bo[r.type](r))}function Q(s,e,t){return jh.text({longest:t},e)||P(s,e,bo.text({longest:t})),e}var Ia={name:"Field day",request:{elements:[{kind:"joint",family:"uhf"},{kind:"cable",cable:"rg_58",length_m:3},{kind:"joint",family:"uhf"},{kind:"part",what:"arrester",loss_db:.1,vswr:1.1,power_limit_w:400,voltage_limit_v:600,name:"Arrester"},{kind:"joint",family:"uhf",adapter_to:"n"},{kind:"cable",cable:"rg_213",length_m:28},{kind:"joint",family:"n",exposure:"exposed"}]}};var As=12,Eh=4*As,Wa=60,ht={lines:[Ia],current:0},Re=s=>s.lines[s.current];var On=60;function Oh(s,e,t,n){let{kind:a}=U(s,e);t.includes(a)||P(`${s}.kind`,a,`one of ${t.join(", ")}`),ie(s,e,n(a),["kind"])}function _o(s,e,t){let{kind:n}=U(s,e);if(n!=="table")return Oh(s,e,Object.keys(Ma),a=>t[`load_${a}`]);X(`${s}.points`,e.points,2,2e3,"points").forEach((a,i)=>{ie(`${s}.points[${i}]`,U(`${s}.points[${i}]`,a),t.point)})}function Jb(s,e,t,n){let{preamplifier:a=null}=U(s,e);if(ie(s,e,t.receiver,["preamplifier"]),a===null)return;let i=`${s}.preamplifier`;ie(i,U(i,a),t.preamplifier),a.before_element>=n&&P(`${i}.before_element`,a.before_element,`0 to ${n-1}`)}function wo(s,e,t=""){let n=t===""?"":`${t}.`;return U(t||"line",s),X(`${n}elements`,s.elements,0,Wa,"elements").forEach((a,i)=>{Oh(`${n}elements[${i}]`,a,Object.keys(kn),r=>e[r])}),s.load!==void 0&&_o(`${n}load`,s.load,e),s.transmitter!==void 0&&ie(`${n}transmitter`,U(`${n}transmitter`,s.transmitter),e.transmitter),s.receiver!==void 0&&Jb(`${n}receiver`,s.receiver,e,s.elements.length),ie(t,s,e.station,["elements","load","transmitter","receiver"]),s}function Ba(s,e){return X("lines",s,1,Eh,"lines").map((t,n)=>{let{name:a,request:i}=U(`lines[${n}]`,t);return{name:Q(`lines[${n}].name`,a,On),request:wo(i,e,`lines[${n}].request`)}})}var Se=Object.freeze({version:1,name:"",address:"",units:"metric",settings:{},rigs:[],rig:-1,antennas:[],antenna:-1,gear:[],cables:[]}),Ua=({rigs:s,rig:e})=>s[e],Fa=({antennas:s,antenna:e})=>s[e],Ha=s=>s!=null;function Xb(s,e){let t=Object.fromEntries(Object.entries({...s,...e}).filter(([,n])=>Ha(n)));return Ha(e.band)?delete t.frequency_hz:Ha(e.frequency_hz)&&delete t.band,t}var jt=(s,{settings:e,...t})=>({...s,...t,settings:e?Xb(s.settings,e):s.settings}),Ah=(s,e)=>JSON.stringify(s)===JSON.stringify(e),Th=(s,e)=>Object.fromEntries(Object.keys({...s,...e}).filter(t=>!Ah(s[t],e[t])).map(t=>[t,s[t]]));function Ms(s,e){let{settings:t,...n}=Th(e,s),a=Th(e.settings,s.settings);return Object.keys(a).length>0?{...n,settings:a}:n}var Mh=s=>s?.load.kind==="vswr"?{vswr:s.load.vswr}:{},qh=({rigs:s},e)=>({rig:e,settings:{power_w:s[e]?.power_w}}),Ch=({antennas:s},e)=>({antenna:e,settings:{vswr:void 0,...Mh(s[e])}}),Rh=s=>({...Ua(s)&&{power_w:Ua(s).power_w},...Mh(Fa(s))});function Nh(s,e){let t=Fa(s)?.load??{kind:"vswr"};return t.kind==="vswr"?{...t,vswr:s.settings.vswr??e}:t}var Da=s=>Ua(s)?.behaviour&&{behaviour:Ua(s).behaviour};function Tn(s,e,t){return e==="band"&&Ha(s.frequency_hz)?null:s[e]??t}var An=(s,{settings:e},t)=>Object.fromEntries(Object.keys(t).map(n=>Object.hasOwn(s,n)?[n,s[n]]:[n,Tn(e,n,t[n])]));function Lh(s,{settings:e={},units:t=s.units,...n}){let{address:a}=s;return{...Object.keys(n).length>0?{...Se,address:a}:{...s,rig:-1,antenna:-1},...n,units:t,settings:e}}var zh=(s,e)=>Ah(s.settings,e?.settings??{})?s:{...s,settings:e?.settings??{}};var Ga={rigs:12,antennas:24,gear:60,cables:40},Qb=40,Zb=s=>s.type==="number"?{...s,min:-Number.MAX_VALUE,max:Number.MAX_VALUE}:s;function e_(s,e){let{bands:t,...n}=U("settings",s),{bands:a,...i}=e,r=Object.entries(i).map(([o,d])=>[o,Zb(d)]);ie("settings",n,Object.fromEntries(r)),t!==void 0&&Wh("settings.bands",t,a.most)}var Wh=(s,e,t)=>X(s,e,0,t,"names").forEach((n,a)=>Q(`${s}[${a}]`,n,Qb));function Ih(s,e,t){(!Number.isInteger(e)||e<-1||e>=t)&&P(s,e,`a place from -1 to ${t-1}`)}function Ka(s,e){let t={...Se,...U("station",s)},{version:n,settings:a,rigs:i,rig:r,antennas:o,antenna:d,gear:c,cables:h,...f}=t;n!==1&&P("version",n,`${1}`),ie("",f,e.shack),e_(a,e.settings);let _=(g,v)=>X(g,t[g],0,Ga[g],g).forEach((k,S)=>{let E=`${g}[${S}]`;v(E,U(E,k))});return _("rigs",(g,v)=>ie(g,v,e.rig)),_("gear",(g,v)=>ie(g,v,e.port)),_("antennas",(g,v)=>{ie(g,v,e.antenna,["load"]),_o(`${g}.load`,v.load,e)}),Wh("cables",h,Ga.cables),Ih("rig",r,i.length),Ih("antenna",d,o.length),t}var $o="setup",yo="units=us",Bh=(s,e)=>JSON.stringify(s)===JSON.stringify(e),Va=(s,e)=>Object.fromEntries(Object.entries(s).filter(([t])=>e(t))),vo=s=>Object.keys(s).length===0;function Mn(s,e=[]){let{settings:t,units:n,address:a,...i}=s,r=Va(t,f=>!e.includes(f)),o=Va(t,f=>e.includes(f)),d={...Va(i,f=>!Bh(i[f],Se[f])),...!vo(o)&&{settings:o}},c=Object.fromEntries(Object.keys(r).map(f=>[f,void 0])),h=vo(d)?"":`${$o}=${fo(JSON.stringify(d))}`;return[Xe(r,c),n===Se.units?"":yo,h].filter(Boolean).join("&")}var Hh="mode=ssb";function Uh(s,e,t){let n=s.split("&"),a=S=>S.split("=")[0],i=S=>Object.hasOwn(t.settings,a(S))&&!e.includes(a(S)),r=S=>i(S)&&!S.endsWith("=null"),o=S=>a(S)===$o,d=n.includes(yo),c=n.filter(S=>!i(S)&&!o(S)&&S!==yo).join("&"),{state:h,unknown:f}=Os(n.filter(r).join("&"),t.settings,{}),{document:_,problem:g}=t_(n.find(o),t);if(vo(h)&&_===void 0&&!d)return{rest:c,changes:void 0,unknown:f,problem:g};let v={..._?.settings,...h},k=Va(v,S=>!Bh(v[S],t.settings[S].default));return{rest:c,changes:{..._,...d&&{units:"us"},settings:k},unknown:f,problem:g}}function t_(s,e){if(s===void 0)return{document:void 0,problem:""};try{let t=JSON.parse(go(s.slice($o.length+1)));return Ka(t,e),{document:t,problem:""}}catch(t){return{document:void 0,problem:`The station in this link can’t be used: ${t instanceof RangeError?t.message:"it is cut short or altered."} Yours is kept.`}}}var s_=["http:","https:"],n_="jointwise-address",xo=({href:s})=>s.replace(/[?#].*$/,""),Et=s=>URL.canParse(s)&&s_.includes(new URL(s).protocol);function Zt(s){return s===""||s.length<=200&&Et(s)&&!s.includes("#")?"":`Address of the page is “${s}”; allowed: a web address with its http or https, without “#”, up to 200 characters.`}function Fh(s){try{let e=s().getItem(n_)??"";return Zt(e)===""?e:""}catch{return""}}var Ya=(s,e)=>s.address||xo(e);var a_=b`
  button, .button {
    min-height: var(--target); min-width: var(--target); padding: 0 var(--space-3); font-size: var(--type-small);
    background: var(--card); border: 1px solid var(--edge); border-radius: var(--round); cursor: pointer;
  }
  .button { display: inline-grid; align-items: center; color: inherit; text-decoration: none; }
  :is(button, .button):hover { border-color: var(--ink); }
  .primary { color: var(--card); background: var(--ink); border-color: var(--ink); font-weight: 600; }
  :is(button, a, label).quiet { background: none; border-color: transparent; color: inherit; font-weight: 500; }
  :is(button, a, label).quiet:hover { background: var(--sunk); }
  button:disabled { color: var(--soft); background: none; border-style: dashed; cursor: default; }
  button[aria-expanded='true'] { background: var(--sunk); border-color: var(--ink); }
  button:is([aria-pressed='true'], [aria-checked='true'], [aria-current]) {
    background: var(--accent); border-color: var(--accent); color: var(--accent-ink); forced-color-adjust: none;
  }
  .choice { border-radius: 99px; }
  /* the head of a row or column: all of it can be pressed */
  .head:is(button) { padding: 0; border: 0; border-radius: 0; background: none; color: inherit; text-align: left; }
  .head:is(button):hover { text-decoration: underline; }
`,i_=b`
  input:not([type='checkbox'], [type='radio'], [type='range']), select {
    min-height: var(--target); padding: 0 var(--space-2); width: 100%; min-width: 0;
    background: var(--card); border: 1px solid var(--edge); border-radius: var(--round); font-size: var(--type-text);
  }
  select { padding-right: var(--space-half); }
  input:is([type='checkbox'], [type='radio'], [type='range']) { accent-color: var(--accent); }
  [aria-invalid='true'] { border-color: var(--alarm) !important; box-shadow: 0 0 0 1px var(--alarm); }
  ::file-selector-button {
    padding: var(--space-1) var(--space-3); font: inherit; color: var(--ink); background: var(--sunk);
    border: 1px solid var(--edge); border-radius: var(--round);
  }
`,r_=b`
  .plain { border-collapse: collapse; width: 100%; font-size: var(--type-small); }
  .plain :is(th, td) {
    padding: var(--space-1) var(--space-2) var(--space-1) 0; text-align: left; vertical-align: top;
    border-bottom: 1px solid var(--line);
  }
  .plain :is(th, td).number { text-align: right; white-space: nowrap; }
  .plain th { font-weight: 600; }
  .plain thead th { color: var(--soft); font-weight: 500; }
`,y=b`
  :host { display: block; }
  :host([hidden]) { display: none; }
  *, *::before, *::after { box-sizing: border-box; }
  :focus-visible { outline: 3px solid var(--focus); outline-offset: 2px; border-radius: 4px; }
  h2, h3, h4, p, ul, dl, dd, figure { margin: 0; }
  h2 { font-size: var(--type-lead); }
  h3, h4 { font-size: var(--type-text); }
  small, sub, sup { font-size: var(--type-fine); }
  a { color: inherit; text-decoration-thickness: 1px; text-underline-offset: 0.15em; }
  button, input, select, textarea { font: inherit; color: inherit; font-variant-numeric: tabular-nums; }
  ${a_}
  ${i_}
  ${r_}
  .formula math { width: max-content; margin: 0; }
  math { font-family: math, 'STIX Two Math', 'Cambria Math', 'Latin Modern Math', 'DejaVu Math TeX Gyre', serif; }
  .quiet { color: var(--soft); font-size: var(--type-small); }
  .error { color: var(--alarm); font-size: var(--type-small); }
  .unseen {
    position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap;
  }
  var { font-style: italic; font-family: 'STIX Two Math', 'Latin Modern Math', Cambria, 'DejaVu Serif', serif; }
  .chip {
    display: inline-block; padding: var(--space-half) var(--space-2); border-radius: 5px; font-weight: 700;
    text-align: center; white-space: nowrap;
  }
  .chip:is(.none, [data-step='refused']) { background: var(--refused); color: var(--refused-ink); font-weight: 500; }
  .kind {
    display: inline-block; padding: 0 var(--space-2); border: 1px solid var(--line); border-radius: 99px;
    color: var(--soft); font-size: var(--type-fine); white-space: nowrap;
  }
  /* what is weakest or limits, and with .bad what is bad: always with its word */
  .sign {
    display: inline-block; padding: 0 var(--space-2); border-radius: 99px; background: var(--ink); color: var(--card);
    font-size: var(--type-fine); font-weight: 600; white-space: nowrap;
  }
  .sign.bad { background: var(--alarm-wash); color: var(--alarm); box-shadow: inset 0 0 0 1px; }
  @media print { .more:not([open]) { display: none; } }
`;var o_={[rh]:10,[oh]:30,[lh]:60},ko=class extends w({status:{type:String,reflect:!0},stage:{type:String}}){static styles=[y,b`
      :host { height: 3px; }
      div { height: 100%; overflow: hidden; }
      p {
        position: fixed; bottom: calc(var(--foot) + var(--space-3)); left: var(--space-3); z-index: 16;
        padding: var(--space-1) var(--space-3); font-size: var(--type-small);
        background: var(--card);
        border: 1px solid var(--line); border-radius: var(--round); box-shadow: 0 4px 20px #0003;
      }
      i { display: block; height: 100%; width: 30%; background: var(--focus); opacity: 0; }
      :host([status='pending']) i { opacity: 1; }
      :host([status='pending']) .moving { animation: pass 1.1s 0.15s infinite ease-in-out backwards; }
      @keyframes pass { from { translate: -100% 0; } to { translate: 340% 0; } }
      @media (prefers-reduced-motion: reduce) { :host([status='pending']) .moving { animation: none; width: 100%; } }
      @media print { :host { display: none; } }
    `];constructor(){super(),this.status="initial",this.stage="",this._reached=""}willUpdate(){this.stage?this._reached=this.stage:this.status!=="pending"&&(this._reached="")}render(){let e=o_[this._reached],t=e===void 0?l`<i class="moving"></i>`:l`<i style="width: ${e}%"></i>`,n=this._reached?l`<p role="status">Starting the core: ${this._reached}</p>`:p;return l`<div>${t}</div>${n}`}};customElements.define("jw-progress",ko);function $(s,e,t){s.dispatchEvent(new CustomEvent(e,{detail:t,bubbles:!0,composed:!0}))}var l_=(s,e)=>JSON.stringify(s)===JSON.stringify(e),d_={own:!0},Dh={left:!0},Ot=class extends w({transport:m(u),stage:{type:String}},me){static view="";static ownNames=[];constructor(){super(),this.stage="",this._begun=!1,this._isChanging=!1,this._isFollowing=!1,this._travelled=()=>this._follow(location.hash.slice(1),!0),this._enquiries=[]}connectedCallback(){super.connectedCallback(),window.addEventListener("popstate",this._travelled),this._begun||this._begin(),this._begun=!0,this._follow(location.hash.slice(1))}disconnectedCallback(){super.disconnectedCallback(),window.removeEventListener("popstate",this._travelled),this._asked=void 0}willUpdate(e){e.get("transport")&&this._askAnew()}shouldUpdate(){return this._begun}updated(){this.transport!==void 0&&this._ask()}get _own(){}set _own(e){throw new Error("A view without a question of its own has none to change.")}_follow(e,t=!1){if(Ts(e,this.vocabulary.views)!==this._name)return;let{own:n=!1,left:a=!1}=history.state??{},i=Sh(e),r=Uh(i.fragment,this._ownNames,this.vocabulary.fields);this._isFollowing=!0;let o=a?"":this._bring(r.changes,n,t),{unknown:d=[],...c}=this._restore(r.rest,n||a)??{};this._isFollowing=!1;let h=[...d,...r.unknown],_=[i.problem,r.problem,h.length>0&&Na(h),c.text,o].filter(Boolean).join(" ");this._notice(_&&{...c,text:_}),this._address(!0)}_bring(e,t,n){let a=this.stationStore;if(t&&!a.isNew)n&&a.put(zh(a.present,e));else if(e)return a.bring(this._name,Lh(a.present,e));return""}get _name(){return this.constructor.view}get _ownNames(){return this.constructor.ownNames}_begin(){}_restore(e,t){}get _fragment(){return""}get _wholeFragment(){return[this._fragment,Mn(this.station,this._ownNames)].filter(Boolean).join("&")}_linkTo(e=this._fragment){let t=Mn(this.station,this._ownNames)||Hh;return`${Et(location.href)?location.href.replace(/#.*$/,""):Ya(this.station,location)}#${[e,t].filter(Boolean).join("&")}`}async _copyLink(e){let t=this._linkTo(e);this._notice(Et(t)?await xn(t):await yh(t,n=>this._notice(n)))}_askAnew(){this._asked=void 0;for(let e of this._enquiries)e.outdate()}_ask(){}_put(e,t={},{live:n=!1,isStep:a=!0,isEntry:i=!0}={}){let r=this._own;this._isChanging=!0,this._own=e,a?this.stationStore.change(this._name,t,{before:r,after:e},n):this.stationStore.put(jt(this.station,t)),this._isChanging=!1,n||this._address(!i),this.requestUpdate()}_settings(e,t=this.vocabulary.first.settings){let n=Object.entries(e).map(([a,i])=>[a,l_(i,t[a])?void 0:i]);return Object.fromEntries(n)}changeStation(e,t=!1){this._put(this._own,e,{live:t})}_stationChanged(e){super._stationChanged(e),!e&&!this._isChanging&&this._begun&&this._address(!0)}_address(e){if(this._isFollowing)return;let t=this._wholeFragment;if(t===location.hash.slice(1)&&(!e||history.state?.own))return;let a=t?`#${t}`:location.pathname+location.search;history[e?"replaceState":"pushState"](d_,"",a)}get ways(){return[{id:"link",words:"Copy link",run:()=>this._copyLink()},{id:"print",words:"Print",run:()=>window.print()}]}_withAnswer(e,t){e?t(e):this._notice({text:"The numbers are not there yet; try again when they are."})}turn(e){this._isChanging=!0;let t=this.stationStore.turn(e,this._name);return this._isChanging=!1,t?.own&&(this._own=this._turned(t.own)),t&&this._address(!0),this.requestUpdate(),t!==void 0}_turned({to:e}){return e}_enquiry(e){let t=new pe(this,(n,a)=>this._call(e,n,a));return this._enquiries.push(t),t}async _call(e,t,n){try{return await this.transport.ask(e,t,n)}catch(a){let i=a;throw i.field&&(i.message=Ca(i,this.vocabulary,e,t)),i}}_progress({status:e}){return l`<jw-progress status=${e} stage=${this.stage===St?"":this.stage}></jw-progress>`}_notice(e){e&&$(this,"jw-notice",e)}};var K=(s,e,t)=>So(s,new Blob([t],{type:e}));function So(s,e){let t=document.createElement("a");t.href=URL.createObjectURL(e),t.download=s,t.click(),URL.revokeObjectURL(t.href)}var qs=(s,e)=>K(s,"application/json",JSON.stringify({made_by:`Jointwise ${H.version}`,...e},null,1));var c_=s=>s/2**32|0,u_=s=>s>>>0;function Gh(s,e,t,n){let a=c_(t),i=u_(t);s.setUint32(e,n?i:a,n),s.setUint32(e+4,n?a:i,n)}function Kh(s){return s instanceof Uint8Array||ArrayBuffer.isView(s)&&s.constructor.name==="Uint8Array"&&"BYTES_PER_ELEMENT"in s&&s.BYTES_PER_ELEMENT===1}var jo=s=>s?`"${s}" `:"";function h_(s,e=""){if(typeof s!="number")throw new TypeError(jo(e)+"expected number, got "+typeof s);if(!Number.isSafeInteger(s)||s<0)throw new RangeError(jo(e)+"expected integer >= 0, got "+s);return s}function Ja(s,e,t=""){if(Kh(s)&&(e===void 0||s.length===e))return s;e!==void 0&&h_(e,"length");let n=Kh(s),a=e!==void 0?` of length ${e}`:"",i=n?`length=${s.length}`:`type=${typeof s}`,r=jo(t)+"expected Uint8Array"+a+", got "+i;throw n?new RangeError(r):new TypeError(r)}var p_=(s,e)=>{if(s===null||typeof s!="object"||Array.isArray(s))throw new TypeError((e==="object"?"":`"${e}" `)+"expected object, got type="+typeof s)},Vh=(s,e)=>{p_(s,e);let t=Object.getPrototypeOf(s);if(t!==Object.prototype&&t!==null)throw new TypeError(`"${e}" expected plain object`);if(Object.hasOwn(s,"__proto__"))throw new TypeError(`"${e}.__proto__" is not allowed`)};function Eo(s,e=!0){if(s.destroyed)throw new Error("hash was destroyed");if(e&&s.finished)throw new Error("digest() was already called")}function Yh(s,e){Ja(s,void 0,"output");let t=e.outputLen;if(!(s.length>=t))throw new RangeError('"output" expected length >= '+t)}function Xa(...s){for(let e=0;e<s.length;e++)s[e].fill(0)}function Qa(s){return new DataView(s.buffer,s.byteOffset,s.byteLength)}function We(s,e){return s<<32-e|s>>>e}var m_=typeof Uint8Array.from([]).toHex=="function"&&typeof Uint8Array.fromHex=="function",f_=Array.from({length:256},(s,e)=>e.toString(16).padStart(2,"0"));function Za(s){if(Ja(s),m_)return s.toHex();let e="";for(let t=0;t<s.length;t++)e+=f_[s[t]];return e}function ei(s){if(typeof s!="string")throw new TypeError("string expected");let e=new TextEncoder().encode(s);try{return new Uint8Array(e)}finally{Xa(e)}}function g_(s,e,t="opts"){return Vh(s,"defaults"),e!==void 0&&Vh(e,t),Object.assign(Object.create(null),s,e)}function Jh(s,e={}){if(typeof s!="function")throw new TypeError('"hashCons" expected function, got type='+typeof s);e=g_({},e,"info");let t=(a,i)=>s(i).update(a).digest(),n=s(void 0);return t.outputLen=n.outputLen,t.blockLen=n.blockLen,t.canXOF=n.canXOF,t.create=a=>s(a),Object.assign(t,e),Object.freeze(t)}var Xh=s=>({oid:Uint8Array.from([6,9,96,134,72,1,101,3,4,2,s])});function Qh(s,e,t){return s&e^~s&t}function Zh(s,e,t){return s&e^s&t^e&t}var ti=class{blockLen;outputLen;canXOF=!1;padOffset;isLE;buffer;view;finished=!1;length=0;pos=0;destroyed=!1;constructor(e,t,n,a){this.blockLen=e,this.outputLen=t,this.padOffset=n,this.isLE=a,this.buffer=new Uint8Array(e),this.view=Qa(this.buffer)}update(e){Eo(this),Ja(e);let{view:t,buffer:n,blockLen:a}=this,i=e.length,r=!1;for(let o=0;o<i;){let d=Math.min(a-this.pos,i-o);if(d===a){let c=Qa(e);for(;a<=i-o;o+=a)this.process(c,o);r=!0;continue}n.set(o===0&&d===i?e:e.subarray(o,o+d),this.pos),this.pos+=d,o+=d,this.pos===a&&(this.process(t,0),this.pos=0,r=!0)}return this.length+=e.length,r&&this.roundClean(),this}digestInto(e){Eo(this),Yh(e,this),this.finished=!0;let{buffer:t,view:n,blockLen:a,isLE:i}=this,{pos:r}=this;t[r++]=128,t.fill(0,r),this.padOffset>a-r&&(this.process(n,0),t.fill(0)),Gh(n,a-8,this.length*8,i),this.process(n,0),this.roundClean();let o=e===t?n:Qa(e),d=this.outputLen,c=d/4,h=this.get();if(d%4||c>h.length)throw new Error("invalid outputLen");for(let f=0;f<c;f++)o.setUint32(4*f,h[f],i)}digest(){let{buffer:e,outputLen:t}=this;this.digestInto(e);let n=e.slice(0,t);return this.destroy(),n}_cloneIntoMeta(e){let{buffer:t,length:n,finished:a,destroyed:i,pos:r}=this;return e.destroyed=i,e.finished=a,e.length=n,e.pos=r,r&&e.buffer.set(t),e}clone(){return this._cloneInto()}},ep=Uint32Array.from([1779033703,3144134277,1013904242,2773480762,1359893119,2600822924,528734635,1541459225]);var b_=Uint32Array.from([1116352408,1899447441,3049323471,3921009573,961987163,1508970993,2453635748,2870763221,3624381080,310598401,607225278,1426881987,1925078388,2162078206,2614888103,3248222580,3835390401,4022224774,264347078,604807628,770255983,1249150122,1555081692,1996064986,2554220882,2821834349,2952996808,3210313671,3336571891,3584528711,113926993,338241895,666307205,773529912,1294757372,1396182291,1695183700,1986661051,2177026350,2456956037,2730485921,2820302411,3259730800,3345764771,3516065817,3600352804,4094571909,275423344,430227734,506948616,659060556,883997877,958139571,1322822218,1537002063,1747873779,1955562222,2024104815,2227730452,2361852424,2428436474,2756734187,3204031479,3329325298]),Tt=new Uint32Array(64),Oo=class extends ti{A=0;B=0;C=0;D=0;E=0;F=0;G=0;H=0;constructor(e,t){super(64,e,8,!1),this.A=t[0]|0,this.B=t[1]|0,this.C=t[2]|0,this.D=t[3]|0,this.E=t[4]|0,this.F=t[5]|0,this.G=t[6]|0,this.H=t[7]|0}get(){let{A:e,B:t,C:n,D:a,E:i,F:r,G:o,H:d}=this;return[e,t,n,a,i,r,o,d]}set(e,t,n,a,i,r,o,d){this.A=e|0,this.B=t|0,this.C=n|0,this.D=a|0,this.E=i|0,this.F=r|0,this.G=o|0,this.H=d|0}_cloneInto(e){return(e||=new this.constructor).set(...this.get()),this._cloneIntoMeta(e)}process(e,t){for(let f=0;f<16;f++,t+=4)Tt[f]=e.getUint32(t,!1);for(let f=16;f<64;f++){let _=Tt[f-15],g=Tt[f-2],v=We(_,7)^We(_,18)^_>>>3,k=We(g,17)^We(g,19)^g>>>10;Tt[f]=k+Tt[f-7]+v+Tt[f-16]|0}let{A:n,B:a,C:i,D:r,E:o,F:d,G:c,H:h}=this;for(let f=0;f<64;f++){let _=We(o,6)^We(o,11)^We(o,25),g=h+_+Qh(o,d,c)+b_[f]+Tt[f]|0,k=(We(n,2)^We(n,13)^We(n,22))+Zh(n,a,i)|0;h=c,c=d,d=o,o=r+g|0,r=i,i=a,a=n,n=g+k|0}n=n+this.A|0,a=a+this.B|0,i=i+this.C|0,r=r+this.D|0,o=o+this.E|0,d=d+this.F|0,c=c+this.G|0,h=h+this.H|0,this.set(n,a,i,r,o,d,c,h)}roundClean(){Xa(Tt)}destroy(){this.destroyed=!0,this.set(0,0,0,0,0,0,0,0),Xa(this.buffer)}},To=class extends Oo{constructor(){super(32,ep)}};var Cs=Jh(()=>new To,Xh(1));var tp="jointwise-";var ni,qn=s=>ni?s.replace(tp,`${tp}${ni.mark}-`):s;function V(){if(!ni)return si();let{texts:s}=ni;return{getItem:e=>__(qn(e))??s[e]??null,setItem:(e,t)=>si().setItem(qn(e),t),removeItem:e=>si().removeItem(qn(e))}}function si(){if(!localStorage)throw new Error("the browser has no storage");return localStorage}function __(s){try{return si().getItem(s)}catch{return null}}var Ao=(s,e)=>e==="metric"?s:{...s,units:e},sp=(s,e)=>e==="metric"?s:{ask:(t,n,a)=>s.ask(t,Ao(n,e),a)};var At=(s,e={})=>Object.fromEntries(Object.entries(s).map(([t,n])=>[t,t in e?{...n,type:"choice",choices:e[t].map(({id:a})=>a)}:n])),fe=(s,e)=>({"":s,...Object.fromEntries(e.map(({id:t,name:n})=>[t,n]))});var Mo=s=>s?.also_called?.find(e=>e.includes(" / "))??"",je=s=>s.map(e=>{let t=Mo(e);return t?{...e,name:`${e.name} (${t})`}:e});var w_=["family"],y_="20m",qo=60,v_=200,ai=s=>({type:"text",longest:s,default:"",nullable:!1}),Co=s=>({...s,nullable:!0,default:null}),$_={plug:"plug (has the nut)",jack:"jack"},np={fields:({requests:{cell:s,matrix:e},parts:{Port:t,Transmitter:n}},{families:a,transmitters:i})=>({settings:{...Object.fromEntries(Object.entries(s).filter(([r])=>!w_.includes(r))),bands:e.bands,band:{...s.band,default:y_}},rig:{name:ai(qo),power_w:s.power_w,...At({behaviour:Co(n.behaviour),family:Co(t.family),gender:Co(t.gender)},{behaviour:i,family:a})},antenna:{name:ai(qo)},shack:{name:ai(qo),address:ai(v_),units:{type:"choice",choices:["metric","us"],default:"metric",nullable:!1}}}),words:({bands:s,families:e,transmitters:t})=>({"settings.bands":{label:"Bands in use",named:s},"settings.band":{label:"Band looked at",options:fe("spot frequency",s)},"settings.frequency_hz":{label:"Spot frequency",factor:1e6,unit:"MHz"},"settings.power_w":{label:"Power looked at"},"rig.name":{label:"What it is"},"rig.power_w":{label:"Greatest power, peak envelope"},"rig.behaviour":{label:"At a bad SWR",options:fe("not given",t)},"rig.family":{label:"Its output socket",options:fe("not given",e)},"rig.gender":{label:"Plug or jack",options:{"":"not given",...$_}},"antenna.name":{label:"What it is"},"shack.name":{label:"Name of the station"},"shack.address":{label:"Address of the page on the web"},"shack.cables":{label:"Cables in use"},"shack.units":{label:"Units",options:{metric:"metric",us:"US"}}})};var ve=class{present;#e;#t;#s;#a;#n;#i=()=>{};wasKept;problem;spoilt;constructor(e,t,n,a){let{document:i,text:r,spoilt:o,problem:d}=e.recalled(t,n);this.#e=e,this.#t=t,this.#s=n,this.#n=r,this.wasKept=i!==void 0,this.present=this.#a=i??a,this.problem=d,this.spoilt=o}attach(e,t){this.#i=t;let n=()=>{let i=this.present;this.catchUp()&&t(i)},a=()=>{};e.addController({hostConnected:()=>{a=this.#e.listen(n),n()},hostDisconnected:()=>a()})}put(e){if(e===this.present)return;let t=this.present;this.catchUp()&&this.#i(t),this.present=this.#e.merged({base:t,mine:e,theirs:this.present}),this.problem=this.#e.remember(this.#t,this.present),this.problem===""&&(this.#a=this.present,this.#n=JSON.stringify(this.present))}turned(e,t){return this.#e.merged({base:e,mine:t,theirs:this.present})}catchUp(){let{document:e,text:t}=this.#e.recalled(this.#t,this.#s);if(e===void 0||t===this.#n)return!1;let n=this.present;return this.present=this.#e.merged({base:this.#a,mine:n,theirs:e}),this.#a=e,this.#n=t,this.present!==n}};var ii=class{#e=[];#t=[];add(e){this.#e=[...this.#e,e].slice(-200),this.#t=[]}canUndo(e){return Ro(this.#e,e)!==-1}canRedo(e){return Ro(this.#t,e)!==-1}undo(e){return ap(this.#e,this.#t,e)}redo(e){return ap(this.#t,this.#e,e)}},Ro=(s,e)=>s.findLastIndex(t=>t.view===e||t.own===void 0);function ap(s,e,t){let n=Ro(s,t);if(n===-1)return;let[a]=s.splice(n,1);return e.push(a),a}var No=(s,e)=>s===e||JSON.stringify(s)===JSON.stringify(e),oe=class{#e;#t;#s;constructor(e,t,n){this.#e=e,this.#t=t,this.#s=n}checked(e,t){return this.#t(e,t)}merged(e){let{base:t,mine:n,theirs:a}=e;return No(a,t)||No(a,n)?n:No(n,t)?a:this.#s?.(e)??n}listen(e){let{key:t}=this.#e,n=a=>(a.key===qn(t)||a.key===null)&&e();return window.addEventListener("storage",n),()=>window.removeEventListener("storage",n)}recalled(e,t){let{key:n,blocked:a,spoilt:i}=this.#e,r;try{r=e().getItem(n)}catch{return{problem:a}}if(r===null)return{problem:""};try{return{document:this.#t(JSON.parse(r),t),text:r,problem:""}}catch{return k_(e(),n,r),{spoilt:r,problem:i}}}remember(e,t){let{key:n,blocked:a,full:i}=this.#e;try{return e().setItem(n,JSON.stringify(t)),""}catch(r){return x_(r)?i:a}}},x_=s=>s instanceof DOMException&&/Quota/i.test(s.name);function k_(s,e,t){try{s.removeItem(e),s.setItem(`${e}-set-aside`,t)}catch{}}var Lo=(s,e)=>JSON.stringify(s)===JSON.stringify(e);function S_(s,e){let t=new Map;for(let n of s){let a=e(n);for(;t.has(a);)a+=`
`;t.set(a,n)}return t}function Ee({base:s,mine:e,theirs:t},n,a=()=>{}){let[i,r,o]=[s,e,t].map(f=>S_(f,n)),d=new Set([...e,...t].map(n)),c=f=>d.has(f),h=[];for(let f of new Set([...r.keys(),...o.keys()])){let[_,g,v]=[i.get(f),r.get(f),o.get(f)];Lo(g,_)?h.push(v):Lo(v,_)||Lo(g,v)?h.push(g):g===void 0||v===void 0?h.push(g??v):h.push(g,a(v,c))}return h.filter(f=>f!==void 0)}function ip(s,e,t){for(let n=2;;n++){let a=` (${n})`,i=s.slice(0,t-a.length)+a;if(!e(i))return i}}var j_={key:"jointwise-station",blocked:"This browser keeps nothing for the page: your station ends when it is closed. Save it as a file to keep it.",full:"This browser has no room for your station: the latest changes are not kept. Save it as a file to keep it.",spoilt:"The station kept in this browser could not be read and was set aside. Save it as a file to look for what is left."},zo=({name:s})=>s;function E_({base:s,mine:e,theirs:t}){let n=jt(t,Ms(s,e)),a={rigs:Ee({base:s.rigs,mine:e.rigs,theirs:t.rigs},zo),antennas:Ee({base:s.antennas,mine:e.antennas,theirs:t.antennas},zo),gear:Ee({base:s.gear,mine:e.gear,theirs:t.gear},zo)},i=(r,o)=>{let d=(e[r][o]??t[r][o])?.name;return o===-1?-1:a[r].findIndex(({name:c})=>c===d)};return{...n,...a,rig:i("rigs",n.rig),antenna:i("antennas",n.antenna)}}var Cn=new oe(j_,Ka,E_);var Po=s=>Object.keys(s).length===0,ri=class{present=Se;#e;#t=new ii;#s=new Set;#a;constructor(e,t){let n=Fh(e),a=n?{...Se,address:n}:Se;this.#e=new ve(Cn,e,t,a),this.present=this.#e.present}get problem(){return this.#e.problem}get spoilt(){return this.#e.spoilt}follow(){Cn.listen(()=>{this.#e.catchUp()&&(this.present=this.#e.present,this.#r())})}#n(){this.#e.put(this.present),this.present=this.#e.present}get isNew(){return this.present===Se}listen(e){return this.#s.add(e),()=>this.#s.delete(e)}put(e){e!==this.present&&(this.present=e,this.#n(),this.#r())}change(e,t,n,a=!1){let i=this.#a??{station:this.present,own:n?.before};this.#a=a?i:void 0,this.present=jt(this.present,t),a||(this.#i(e,i,n),this.#n()),this.#r(a)}bring(e,t){let{isNew:n}=this,a=Ms(this.present,t);return Po(a)?"":(n?this.put(jt(this.present,a)):this.change(e,a),n?"":"The station of this link is shown; Undo brings back yours.")}#i(e,t,n){let a=Ms(this.present,t.station),i=Ms(t.station,this.present),r=n!==void 0&&n.after!==t.own;Po(i)&&!r||this.#t.add({view:e,...!Po(i)&&{station:{before:a,after:i}},...r&&{own:{before:t.own,after:n.after}}})}canUndo(e){return this.#t.canUndo(e)}canRedo(e){return this.#t.canRedo(e)}turn(e,t){let n=this.#t[e](t),[a,i]=e==="undo"?["after","before"]:["before","after"];if(n)return n.station?this.put(jt(this.present,n.station[i])):this.#r(),n.own?{own:{from:n.own[a],to:n.own[i]}}:{}}#r(e=!1){for(let t of this.#s)t(e)}};var Rn=b`
  main {
    display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); align-items: start;
    padding: var(--space-3) var(--space-2) var(--space-10);
  }
  main:focus { outline: none; }
  .trouble {
    display: flex; flex-wrap: wrap; gap: var(--space-2) var(--space-3); align-items: center;
    padding: var(--space-2) var(--space-3); background: var(--alarm-wash); border: 1px solid var(--alarm);
    border-radius: var(--round);
  }
  .onpaper { display: none; }
  .waiting { min-height: 60vh; }
  .waiting.empty { min-height: 0; }
  jw-progress { position: sticky; top: 0; z-index: 5; }
  @media (min-width: 700px) { main { padding: var(--space-3) var(--space-4) var(--space-10); } }
`,Qe=b`
  ${Rn}
  .bar { display: flex; flex-wrap: wrap; gap: var(--space-2); align-items: end; }
  .answer { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); align-content: start; }
  @media (min-width: 1180px) {
    main { grid-template-columns: minmax(330px, 25%) minmax(0, 1fr); }
    .bar, .trouble { grid-column: 1 / -1; }
  }
  @media print {
    main { display: block; padding: 0; }
    .answer { gap: 2mm; }
    .noprint, .bar { display: none; }
  }
`;var Io=[[1e9,"G"],[1e6,"M"],[1e3,"k"],[1,""],[.001,"m"],[1e-6,"µ"],[1e-9,"n"],[1e-12,"p"]],O_=new Set(["Hz","m","Ω","W","V","s","A","F","H","J","V/m","Ω/m","Pa","S/m"]),T_=99.95;function A(s){let e=Math.abs(s);return`${s<0?"−":"+"}${e.toFixed(e<T_?1:0)}`}function j(s,e=4){if(s===0)return"0";let t=Math.abs(s);if(t>=1e6||t<1e-4){let[n,a]=s.toExponential(e-1).split("e");return`${rp(String(Number(n)))}·10${M_(a)}`}return rp(String(t>=10**e?Math.round(s):Number(s.toPrecision(e))))}function B(s,e,t=4){if(typeof s=="string")return s;if(e==="1"||e==="")return j(s,t);if(!O_.has(e)||s===0)return`${j(s,t)} ${e}`;let n=Math.abs(s),[a,i]=Io.find(([r])=>n>=r*.99999)??Io[Io.length-1];return`${j(s/a,t)} ${i}${e}`}var M=s=>B(s,"Hz",6);function C(s){return s===0?"receive":B(s,"W")}function A_(s){return s===0?"Rx":s>=1e3?`${j(s/1e3,3)}k`:j(s,4)}function Nn(s){return s>=995e3?">1M":A_(Be(s,2))}function Be(s,e){let t=10**(Math.floor(Math.log10(s))-e+1);return Number((Math.floor(s/t)*t).toPrecision(e))}var rp=s=>s.replace("-","−"),M_=s=>[...s.replace("+","")].map(e=>e==="-"?"⁻":"⁰¹²³⁴⁵⁶⁷⁸⁹"[e]).join("");var es=.30479999999999996,op=.45359237*9.80665,lp=5/9,q_=[[[1,"m","metre","metres","meter","meters"],[1e3,"km"],[.01,"cm"],[.001,"mm"],[1e-6,"µm","um"],[es,"ft","foot","feet","'"],[.0254,"in","inch","inches",'"'],[3*es,"yd","yard","yards"],[5280*es,"mi","mile","miles"]],[[1,"Hz"],[1e3,"kHz","k","K"],[1e6,"MHz","mhz","M"],[1e9,"GHz","G"]],[[1,"W","w","watt","watts"],[1e-6,"µW","uW"],[.001,"mW"],[1e3,"kW","k","K"],[1e6,"MW"]],[[1,"V","v","volt","volts"],[.001,"mV"],[1e3,"kV","k","K"]],[[1,"A","a","amp","amps"],[.001,"mA"],[1e3,"kA"]],[[1,"Ω","ohm","ohms","R"],[1e-6,"µΩ","uohm"],[.001,"mΩ","mohm"],[1e3,"kΩ","kohm","k","K"],[1e6,"MΩ","Mohm","M"]],[[1,"F"],[1e-12,"pF","p"],[1e-9,"nF","n"],[1e-6,"µF","uF","µ","u"]],[[1,"H"],[1e-9,"nH","n"],[1e-6,"µH","uH","µ","u"],[.001,"mH"]],[[1,"s","sec","second","seconds"],[.001,"ms"],[60,"min","minute","minutes"],[3600,"h","hr","hour","hours"]],[[1,"years","year","yr","yrs","y"],[1/12,"months","month"]],[[1,"N·m","Nm"],[op*.0254,"in-lb","in-lbs","in-lbf","lb-in","lbf-in"],[op*es,"ft-lb","ft-lbs","ft-lbf","lb-ft","lbf-ft"]],[[1,"K","kelvin"],[1,"°C","C","c","degC","celsius"],[lp,"°F","F","f","degF","fahrenheit"]],[[1,"m²","m2"],[1e-6,"mm²","mm2"]],[[1,"Ω/m","ohm/m"],[.001,"Ω/km","ohm/km"],[.001/es,"Ω/1000 ft","ohm/1000 ft"]],[[1,"F/m"],[1e-12,"pF/m"],[1e-12/es,"pF/ft"]],[[1,"dB/m"],[.01,"dB/100 m"],[.01/es,"dB/100 ft"]],[[1,"1/Hz"],[1e-9,"1/GHz"]],[[1,"dB"]],[[1,"°","deg","degree","degrees"]],[[1,"W/m²","W/m2"]],[[1,"matings","mating"]],[[1,"",": 1"],[.01,"%"]]],C_={"°C":273.15,"°F":459.67*lp},oi=s=>s.replace(/\s/g,"").replace(/(?<=[a-z])(?:[.·*-](?=[a-z])|\.$)/gi,""),Wo=(s,e)=>oi(s)===oi(e),R_=/^m(.|Hz|ohm)$/i,N_=(s,e)=>{let[t,n]=[oi(s),oi(e)],a=R_.test(t)&&t[0]!==n[0];return t.length>1&&!a&&t.toLowerCase()===n.toLowerCase()},dp=s=>q_.find(e=>e.some(([,t])=>Wo(t,s)))??[[1,s]];function ts(s,e){let t=dp(e),[n]=[Wo,N_].flatMap(r=>t.filter(([,...o])=>o.some(d=>r(d,s===""?e:s))));if(!n)return;let[a,i]=n;return{name:i,factor:a,zero:C_[i]??0}}var cp=s=>s===""?[]:dp(s).map(([,e])=>e).filter(e=>e!==""&&!Wo(e,s));var L_={m:"ft",cm:"in",mm:"in","°C":"°F","N·m":"in-lb","dB/100 m":"dB/100 ft"},pp=.3048,up={"dB/100 m":pp},Rs=3,mp=100,z_={ft:2,in:4,"°F":1,"in-lb":1},P_=1e-9,I_=2,W_=6,B_="°F",Oe="metric",Ns=()=>Oe,fp=s=>{Oe=s},hp=s=>s;function ge(s,e=Oe){let t=e==="us"?L_[s]:void 0;if(t===void 0)return{unit:s,shown:hp,sent:hp};if(s in up){let i=up[s];return{unit:t,shown:r=>r*i,sent:r=>r/i}}let[n,a]=[s,t].map(i=>ts(i,s));return{unit:t,shown:i=>(i*n.factor+n.zero-a.zero)/a.factor,sent:i=>(i*a.factor+a.zero-n.zero)/n.factor}}var Ln=(s,e=Oe)=>ge(s,e).unit,H_=(s,e)=>Math.abs(s-Number(s.toFixed(e)))<=P_*Math.max(Math.abs(s),1);function Bo(s,e,t=Rs){let n=z_[e];return n!==void 0&&H_(s,n)?Number(s.toFixed(n)):Math.abs(s)>=mp?Math.round(s):Number(s.toPrecision(Math.min(t,Rs)))}function Mt(s,e,t,n=Oe){let a=ge(e,n);return a.unit===e?j(s,t):j(Bo(a.shown(s),a.unit,t),W_)}var ss=(s,e,t,n=Oe)=>`${Mt(s,e,t,n)} ${Ln(e,n)}`,Te=(s,e,t=Oe)=>ss(s,"m",e,t);function U_(s,e=Rs,t=Oe){let n=t==="us"?pp:1;return Math.abs(s)<n?ns(s,e,t):Te(s,e,t)}var ns=(s,e=Rs,t=Oe)=>ss(s*1e3,"mm",e,t),qt=(s,e=Rs,t=Oe)=>ss(s,"°C",e,t),gp=(s,e=Rs,t=Oe)=>ss(s,"N·m",e,t);function se(s,e,t,n=Oe){return typeof s=="string"||ge(e,n).unit===e?B(s,e,t):e==="m"?U_(s,t,n):ss(s,e,t,n)}var F_=/(?<![\w.])(-?\d+(?:\.\d+)?)(?: to (-?\d+(?:\.\d+)?))? (mm|cm|m|°C|N·m)(?![\p{L}\d_])(?: \([^()]*in-lb\))?/gu;function bp(s,e=Oe){return e==="metric"?s:s.replace(F_,(t,n,a,i)=>{let r=[n,a].filter(Boolean),o=Math.max(I_,...r.map(f=>f.replace(/[.-]|^0+|0+$/g,"").length)),{unit:d,shown:c}=ge(i,e);return`${r.map(f=>{let _=c(Number(f));return String(Math.abs(_)>=mp||d===B_?Math.round(_):Number(_.toPrecision(o)))}).join(" to ")} ${d}`})}var D_=["cables","wire_lines"],G_={families:({id:s,name:e,also_called:t})=>({id:s,name:e,also_called:t}),cables:({id:s,name:e})=>({id:s,name:e}),wire_lines:({id:s,name:e})=>({id:s,name:e}),bands:({id:s,name:e,regions:t})=>({id:s,name:e,regions:Object.keys(t).sort()}),modes:s=>s},_p={families:"interfaces",cables:"cables",wire_lines:"wire_lines",bands:"bands",modes:"modes"};function K_(s,e,t){let n=new Map(e.map(a=>[a.id,a]));for(let a of t)for(let i of a[_p[s]]??[]){let{name:r,...o}=G_[s](i);n.set(i.id,{...o,name:`${r} (pack ${a.name})`})}return[...n.values()]}var V_=(s,e,t)=>D_.includes(s)?e.map(n=>({...n,name:bp(n.name,t)})):e;function wp(s,e,t="metric"){let n=e.map(({text:f})=>JSON.parse(f)),{conditions:a,installations:i,noise_environments:r,antenna_views:o,transmitters:d}=s,c=n.findLast(({default_powers_w:f})=>f?.length)?.default_powers_w,h=Object.keys(_p).map(f=>[f,V_(f,K_(f,s[f],n),t)]);return{...Object.fromEntries(h),conditions:a,installations:i,noise_environments:r,antenna_views:o,transmitters:d,powers_w:c??s.requests.matrix.powers_w.default}}var Y_="matrix",yp=s=>Object.assign({},...s),J_=s=>Object.fromEntries(Object.entries(s).map(([e,t])=>[e,t.default])),li=12,X_=3,$p=6,Q_=s=>String(s).replace(/\D|^[0.-]+/g,"").length>=$p;function vp(s,e){if(s===0)return"0";let t=10**Math.min(Math.floor(Math.log10(Math.abs(s)))-X_+1,0);return j(Number((e(Number((s/t).toPrecision(li)))*t).toPrecision(li)),6)}var di=class s{#e;isPacked;units;views;lists;fields;first;words;constructor(e,t,n,a="metric"){this.#e={start:e,speakers:t,packs:n},this.isPacked=n.length>0,this.units=a,this.views=t.flatMap(({id:i})=>i??[]),this.lists=wp(e,n,a),this.fields=yp(t.map(({fields:i})=>i?.(e,this.lists))),this.first=Object.fromEntries(Object.entries(this.fields).map(([i,r])=>[i,J_(r)])),this.words=yp(t.map(({words:i})=>i?.(this.lists)))}withPacks(e){let{start:t,speakers:n,packs:a}=this.#e;return new s(t,n,[...a,...e],this.units)}wordsOf(e){return this.words[e]??this.words[e.split(".")[1]]}labelOf(e){return this.wordsOf(e)?.label}fieldOf(e){let[t,n=Y_]=e.split(".").reverse();return this.fields[n]?.[t]}valueOf(e,t){return e?.[t.split(".")[1]]??this.fieldOf(t).default}#t(e){return this.wordsOf(e).unit??this.fieldOf(e).unit??""}#s(e){return ge(this.#t(e),this.units)}#a(e){return this.wordsOf(e).factor??1}unitOf(e){return this.#s(e).unit}isConverted(e){return this.#a(e)!==1||this.#n(e)}#n(e){return this.unitOf(e)!==this.#t(e)}sent(e,t){let n=this.#s(e).sent(t)*this.#a(e);return Number(n.toPrecision(this.#n(e)&&Q_(t)?$p:li))}stepOf(e){let t=this.wordsOf(e).step??1;if(!this.#n(e))return t;let{shown:n}=this.#s(e);return 10**Math.floor(Math.log10(n(t)-n(0)))}emptyOf(e){return this.wordsOf(e).empty??"not given"}shown(e,t){let n=this.#i(e,t);return this.#n(e)?Bo(n,this.unitOf(e)):Number(n.toPrecision(li))}#i(e,t){return this.#s(e).shown(t/this.#a(e))}figure(e,t){let[n,a]=[this.unitOf(e),this.shown(e,t)];return n==="W"?B(a,n):`${j(a)} ${n}`.trim()}rangeOf(e){let t=this.fieldOf(e),{min:n,max:a}=t.type==="list"?t.items:t,i=this.#n(e),r=this.unitOf(e);if(i){let[f,_]=[vp(this.#i(e,n),Math.ceil),vp(this.#i(e,a),Math.floor)];return`${f} to ${_} ${r}`.trim()}let[o,d]=[n,a].map(f=>this.figure(e,f)),[,c=""]=/^\S+( .+)$/.exec(d)??[];return`${n===0||c&&o.endsWith(c)?o.split(" ")[0]:o} to ${d}`}optionsOf(e){let{options:t,entries:n}=this.wordsOf(e);return n?n.map(({id:a,name:i})=>[a,i]):Object.entries(t??{})}nameOf(e,t){return(this.wordsOf(e).named?.map(a=>[a.id,a.name])??this.optionsOf(e)).find(([a])=>a===t)?.[1]}namesOf(e){return this.wordsOf(e).named?.map(n=>n.name)??this.optionsOf(e).filter(([n])=>n!=="").map(([,n])=>n)}spoken(e,t){let{named:n,options:a}=this.wordsOf(e);return t===null?a?.[""]??this.emptyOf(e):e.endsWith("added_sealing")?t?"yes":"no":n?t.map(i=>this.nameOf(e,i)??i).join(", "):Array.isArray(t)?t.map(i=>this.figure(e,i)).join(", "):typeof t=="number"&&!a?this.figure(e,t):this.nameOf(e,String(t))??String(t)}};function as(s,{lists:e}){let t=new Map(e.bands.map(n=>[n.id,n]));return s.bands.filter(n=>t.get(n)?.regions.includes(String(s.region))??!0)}var Ho=matchMedia("(min-width: 1280px)"),xp=["beforeprint","afterprint"];function Z_(){let s=document.activeElement;for(;s?.shadowRoot?.activeElement;)s=s.shadowRoot.activeElement;return s}var Uo=class extends w({heading:{type:String}}){static styles=[y,b`
      dialog {
        position: fixed; inset: 0; z-index: 20; width: 100vw; height: 100dvh; max-width: none; max-height: none;
        margin: 0; padding: 0; border: 0; overflow: hidden; color: inherit; background: var(--card);
      }
      dialog[open] { display: flex; flex-direction: column; }
      .head {
        display: flex; gap: var(--space-3); align-items: center;
        padding: var(--space-2) var(--space-2) var(--space-2) var(--space-4); border-bottom: 1px solid var(--line);
      }
      h2:focus { outline: none; }
      h2 { flex: 1; font-size: var(--type-lead); line-height: 1.25; }
      .body {
        flex: 1; overflow: auto; padding: var(--space-4) var(--space-4) var(--space-10); overscroll-behavior: contain;
      }
      dialog::backdrop { background: #0006; }
      @media (max-width: 699px) {
        dialog { inset: auto 0 0; height: 88dvh; border-top: 1px solid var(--edge); border-radius: 16px 16px 0 0; }
      }
      @media (min-width: 700px) {
        dialog { inset: 0 0 0 auto; width: 600px; border-left: 1px solid var(--edge); box-shadow: 0 0 40px #0005; }
      }
      @media (min-width: 1280px) { dialog { inset: var(--masthead-end) 0 0 auto; width: var(--sheet); height: auto; } }
      @media print {
        dialog, dialog[open] {
          position: static; display: block; width: auto; height: auto; overflow: visible; border: 0; box-shadow: none;
          break-before: page;
        }
        dialog:not([open]), #close { display: none; }
        .head { padding: 0 0 2mm; }
        .body { overflow: visible; padding: 2mm 0 0; columns: 2 85mm; column-gap: 8mm; }
      }
    `];constructor(){super(),this.heading="",this._printing=!1,this._placed=()=>this._place(),this._printed=({type:e})=>{this._printing=e==="beforeprint",this._place()},this._escaped=e=>{e.key==="Escape"&&this.heading&&!e.defaultPrevented&&this._close(e)}}connectedCallback(){super.connectedCallback(),Ho.addEventListener("change",this._placed);for(let e of xp)window.addEventListener(e,this._printed);window.addEventListener("keydown",this._escaped)}disconnectedCallback(){super.disconnectedCallback(),Ho.removeEventListener("change",this._placed);for(let e of xp)window.removeEventListener(e,this._printed);window.removeEventListener("keydown",this._escaped)}render(){return l`<dialog aria-labelledby="heading" @cancel=${this._close}>
      <div class="head">
        <h2 id="heading" tabindex="-1">${this.heading}</h2>
        <button id="close" @click=${this._close}>Close</button>
      </div>
      <div class="body" tabindex="0" role="group" aria-labelledby="heading"><slot></slot></div>
    </dialog>`}updated(e){if(e.has("heading")){if(this.heading==="")return this._closed();this.matches(":focus-within")||(this._opener=Z_()),this._place(),N(this.renderRoot,".body").scrollTop=0,N(this.renderRoot,"h2").focus()}}get _dialog(){return N(this.renderRoot,"dialog")}_place(){if(this.heading==="")return;let e=Ho.matches||this._printing;this._dialog.open&&this._beside===e||(this._beside=e,this._dialog.close(),this._beside?this._dialog.show():this._dialog.showModal())}_closed(){this._dialog.close(),this._opener?.isConnected&&this._opener.focus(),this._opener=void 0}_close(e){e.preventDefault(),this.dispatchEvent(new CustomEvent("jw-close",{bubbles:!0,composed:!0}))}};customElements.define("jw-sheet",Uo);var Fo=class extends w({undo:{type:Boolean},redo:{type:Boolean}}){static styles=[y,b`
      div { display: flex; gap: var(--space-1); }
      @media print { :host { display: none; } }
    `];render(){return l`<div role="group" aria-label="Undo">
      ${this._button("undo","Undo",this.undo)}${this._button("redo","Redo",this.redo)}
    </div>`}_button(e,t,n){return l`<button id=${e} class="quiet" ?disabled=${!n}
      @click=${()=>$(this,"jw-turn",{way:e})}>${t}</button>`}};customElements.define("jw-undo",Fo);var Z=class extends w({name:{type:String},value:m(u),error:{type:String}},O){static styles=[y,b`
      :host { min-width: 0; }
      label, legend {
        display: block; font-size: var(--type-small); font-weight: 600; margin-bottom: var(--space-1); padding: 0;
      }
      .under {
        display: block; min-height: 1.35em; margin-top: var(--space-half); font-size: var(--type-fine);
        line-height: 1.35; color: var(--soft);
      }
      .under.error { color: var(--alarm); font-weight: 600; }
    `];constructor(){super(),this.error=""}get label(){return this.vocabulary.labelOf(this.name)}under(e){let{problem:t}=this;return l`<span class=${t?"under error":"under"} id="under" role=${t?"alert":"note"}
      >${t||e}</span>`}get problem(){return this._refusedValue===JSON.stringify(this.value)?this.error:""}willUpdate(e){e.has("error")&&(this._refusedValue=JSON.stringify(this.value))}get invalid(){return this.problem?"true":"false"}get field(){return this.vocabulary.fieldOf(this.name)}change(e,t=!1){let n={changes:{[this.name]:e},live:t};this.dispatchEvent(new CustomEvent("jw-change",{detail:n,bubbles:!0,composed:!0}))}};var Do=class extends w({hint:{type:String}},Z){#e=new Ce(this,{context:En});constructor(){super(),this.hint=""}render(){return l`<label for=${this.name}>${this.label}</label>
      <select id=${this.name} aria-invalid=${this.invalid} aria-describedby="under" @change=${this._chosen}>
        ${this._options.map(([e,t])=>l`<option value=${e} .selected=${e===String(this.value??"")}>${t}</option>`)}
      </select>
      ${this.under(this.hint)}`}get _options(){let e=this._inOrder(this.vocabulary.optionsOf(this.name)),t=String(this.value??"");return e.some(([n])=>n===t)?e:[...e,[t,t||this.vocabulary.emptyOf(this.name)]]}_inOrder(e){let t=this.name.split(".").at(-1)==="cable"?this.#e.value?.present.cables??[]:[],n=([a])=>a===""?0:t.includes(a)?1:2;return t.length>0?e.toSorted((a,i)=>n(a)-n(i)):e}_chosen(e){let{value:t}=e.target;t===""?this.change(null):this.change(this.field.type==="number"?Number(t):t)}};customElements.define("jw-choice-field",Do);var Go=class extends Z{static styles=[...Z.styles,b`
      input {
        width: 100%; min-height: var(--target); padding: var(--space-2); border: 1px dashed var(--edge);
        border-radius: var(--round); background: var(--card); font-size: var(--type-small);
      }
      ::file-selector-button {
        font: inherit; padding: var(--space-1) var(--space-3); color: var(--ink); background: var(--sunk);
        border: 1px solid var(--edge); border-radius: 6px;
      }
    `];render(){return l`<label for=${this.name}>${this.label}</label>
      <input id=${this.name} type="file" accept=".s1p,.s2p,.ts,.txt" aria-invalid=${this.invalid}
        aria-describedby="under" @change=${this._picked}>
      ${this.under(this.value?this._held():"pick a file or drop it here")}`}_held(){return`${this.value.split(`
`).filter(t=>/^\s*[\d.+-]/.test(t)).length} rows of numbers are in the line; another file takes their place`}async _picked(e){let[t]=e.target.files;t&&this.change(await t.text())}};customElements.define("jw-file-field",Go);var Sp=[{decimal:".",group:","},{decimal:",",group:"."}],jp=[...Sp.map(s=>({marks:s,between:/[\s;]+|,\s+|,$/})),{marks:{decimal:".",group:""},between:/[\s;,]+/}],ew=6,tw=15,sw=12,nw="MHz",aw=/^([+-]?) ?((?:\d[\d.,' ]*[\d.,]|\d|[.,]\d+)(?:e[+-]?\d+)?) ?([^\d\s].*)?$/i,iw=s=>s.trim().replace(/\s+/g," ").replace(/[−–\u2010\u2011]/g,"-").replace(/[’‘′]/g,"'").replace(/[″“”]/g,'"').replaceAll("μ","µ").replaceAll("Ω","Ω").replace(/[º˚]/g,"°");function rw(s,{decimal:e,group:t}){let[n,a="0"]=s.toLowerCase().split("e"),[i,r="",...o]=n.split(e),[,d=""]=/^[1-9]\d{0,2}([.,' ])/.exec(i)??[],[c,...h]=d===""?[i]:i.split(d);if(!(d===""?/^\d*$/.test(i):[t,"'"," "].includes(d)&&h.every(g=>/^\d{3}$/.test(g)))||o.length>0||!/^\d*$/.test(r))return;let _=+`${[c,...h].join("")}.${r}e${a}`;return Number.isFinite(_)?_:void 0}var Ep=(s,e)=>Number(s.toPrecision(e));function ow(s,e,t,n){if(t.name===n.name)return s;let a=e.replace(/e.*/i,"").replace(/\D|^[^1-9]+/g,"").length,i=Math.min(Math.max(a,ew),tw);return Ep((s*t.factor+t.zero-n.zero)/n.factor,i)}var kp=(s,e)=>`${s} ${e}`.trim();function Ko(s,e,t){let[,n,a,i=""]=aw.exec(iw(s))??[],[r,o]=[ts(i,e),ts("",e)];if(a===void 0||!r||!o)return;let c=r.name===nw&&t.group==="."&&/^\d+\.\d{3}$/.test(a)?void 0:rw(a,t);if(c===void 0)return;let h=n==="-"&&c!==0?-c:c,f=ow(h,a,r,o),_=kp(h,r.name);return{value:f,words:_,converted:r.name===o.name?"":`${_} is ${kp(f,e)}`}}function Vo(s){let e=s.filter(t=>t!==void 0);return[...new Map(e.map(t=>[JSON.stringify(t.value),t])).values()]}var is=(s,e="")=>Vo(Sp.map(t=>Ko(s,e,t)));function Op(s,e=""){let t=s.trim().replace(/(\d[.,]?)\s+(?=[^\d\s.,;+−–-])/g,"$1");return Vo(jp.map(({marks:n,between:a})=>{let i=t.split(a).filter(Boolean),r=i.map(d=>Ko(d,e,n)).filter(d=>d!==void 0);if(r.length<i.length)return;let o=r.map(d=>d.converted).filter(Boolean);return{value:r.map(d=>d.value),words:r.map(d=>d.words).join(" and "),converted:o.join(", ")}}))}function Yo(s,e){let t=Vo(jp.map(({marks:a,between:i})=>{let r=s.map(d=>d.split(i).map(c=>Ko(c,"",a)?.value));return r.every(d=>d.length===e&&!d.includes(void 0))?{value:r,words:"",converted:""}:void 0})),n=s.findIndex((a,i)=>new Set(t.map(({value:r})=>String(r[i]))).size>1);return t.map(a=>({...a,words:a.value[n]?.join("  ")??""}))}function ci(s,e,t,n=""){let a=cp(n),i=n===""?", without a unit":a.length>0?`, also in ${a.join(", ")}`:"";return`${s} is ${e.trim()===""?"empty":`“${e.trim()}”`}; allowed: ${t}${i}.`}var ui=(s,e,t)=>`${s} is “${e.trim()}”: is that ${t.map(({words:n})=>n).join(" or ")}?`;function hi(s){let e=String(Ep(s,sw));return/^-?[1-9]\d{0,2}\.\d{3}$/.test(e)?`${e}0`:e}var pi=b`
  .readings { display: flex; flex-wrap: wrap; gap: var(--space-2); margin-top: var(--space-1); }
`,mi=(s,e,t)=>l`<div class="readings" role="group" aria-label="${s} is">
    ${e.map(n=>l`<button type="button" @click=${()=>t(n)}>${n.words}</button>`)}
  </div>`;var rs=class extends w({_readings:x(u),_refused:x(u),_converted:x(u)},Z){static styles=[...Z.styles,pi];constructor(){super(),this._taken="",this.forget()}willUpdate(e){if(super.willUpdate(e),!e.has("value"))return;let[t,n]=[e.get("value"),this.value].map(a=>JSON.stringify(a));t!==n&&n!==this._taken&&this.forget()}get problem(){return this._refused||super.problem}get unit(){return this.vocabulary.unitOf(this.name)}textOf(e){return""}read(e,t,n){this.forget(),t.length===1?this._choose(t[0]):t.length===0?this._refused=ci(this.label,e,n,this.unit):(this._readings=t,this._refused=ui(this.label,e,t))}take(e){this._taken=JSON.stringify(e),this.input.value=this.textOf(e),this.change(e)}forget(){this._readings=[],this._refused="",this._converted=""}under(e){return l`${super.under(this._converted?`${this._converted}.`:e)}
      ${this._readings.length>0?mi(this.label,this._readings,this._chosen):p}`}sent(e){return this.vocabulary.sent(this.name,e)}get input(){return N(this.renderRoot,'input[type="text"]')}_chosen=e=>{this.shadowRoot?.activeElement?.matches(":focus-visible")&&this.input.focus(),this.forget(),this._choose(e)};_choose({value:e,converted:t}){this._converted=t,this.take(Array.isArray(e)?this.gathered(e.map(n=>this.sent(n))):this.sent(e))}gathered(e){return e}};var Jo=1e3,Tp={ArrowUp:1,ArrowDown:-1},Ap=s=>s===null||s==="",Xo=class extends rs{static styles=[...rs.styles,b`
      .row { display: flex; gap: var(--space-3); align-items: center; }
      input[type='range'] { flex: 1 1 70px; min-width: 60px; height: var(--target); margin: 0; }
      .row input[type='text'] { flex: 0 1 5.2rem; min-width: 4rem; padding-right: var(--space-half); }
      .row input[type='text']:only-child { flex: 1 1 auto; }
    `];render(){let{min:e,max:t}=this._range,n=i=>this.vocabulary.shown(this.name,i),a=!Ap(this.value)&&!this.problem;return l`<label for=${this.name}>${this.label}</label>
      <div class="row">
        ${this.vocabulary.wordsOf(this.name).slider?this._slider():p}
        <input id=${this.name} type="text" inputmode=${e<0?"text":"decimal"} autocomplete="off"
          spellcheck="false" role="spinbutton" aria-valuemin=${n(e)} aria-valuemax=${n(t)}
          aria-valuenow=${a?n(this.value):p} .value=${this.textOf(this.value)}
          aria-invalid=${this.invalid} aria-describedby="under"
          placeholder=${this.field.nullable?this.vocabulary.emptyOf(this.name):""} @change=${this._typed}
          @keydown=${this._stepped}>
      </div>
      ${this.under(this.vocabulary.rangeOf(this.name))}`}textOf(e){return Ap(e)?"":String(this.vocabulary.shown(this.name,e))}_slider(){return l`<input type="range" min="0" max=${Jo} step="1" .value=${String(this._position())}
      aria-label="${this.label}, slider" aria-valuetext=${String(this.vocabulary.shown(this.name,this.value))}
      @input=${e=>this._slid(e,!0)} @change=${e=>this._slid(e,!1)}>`}get _logarithmic(){return this.vocabulary.wordsOf(this.name).slider==="logarithmic"}get _range(){return this.field}get _step(){return this.vocabulary.stepOf(this.name)}_position(){let{min:e,max:t}=this._range,n=Math.min(Math.max(this.value,e),t),a=this._logarithmic?Math.log(n/e)/Math.log(t/e):(n-e)/(t-e);return Math.round(a*Jo)}_slid(e,t){let{min:n,max:a}=this._range,i=Number(e.target.value)/Jo,r=this._logarithmic?n*(a/n)**i:n+(a-n)*i;this.forget(),this.change(this.sent(Math.round(this.vocabulary.shown(this.name,r)/this._step)*this._step),t)}_typed({target:{value:e}}){e===this.textOf(this.value)?this.forget():e.trim()===""&&this.field.nullable?(this.forget(),this.take(null)):this.read(e,is(e,this.unit),this.vocabulary.rangeOf(this.name))}get _standing(){let e=this.input.value;if(e.trim()==="")return 0;if(e===this.textOf(this.value))return this.value;let t=is(e,this.unit);return t.length===1?this.sent(t[0].value):void 0}_stepped(e){let{key:t,altKey:n,ctrlKey:a,metaKey:i,shiftKey:r}=e;if(!(t in Tp)||n||a||i||r)return;e.preventDefault();let o=this._standing;if(o===void 0)return;let{min:d,max:c}=this._range,h=this.sent(this.vocabulary.shown(this.name,o)+Tp[t]*this._step);this.forget(),this.take(Math.min(Math.max(h,d),c))}};customElements.define("jw-number-field",Xo);var Qo=class extends Z{static styles=[...Z.styles,b`
      label { display: flex; gap: var(--space-3); align-items: center; min-height: var(--target); margin: 1.2rem 0 0; }
      input { width: 22px; height: 22px; margin: 0; }
    `];render(){return l`<label>
        <input id=${this.name} type="checkbox" .checked=${this.value} aria-invalid=${this.invalid}
          @change=${e=>this.change(e.target.checked)}>
        ${this.label}
      </label>
      ${this.under("")}`}};customElements.define("jw-switch-field",Qo);var Zo=class extends Z{render(){return l`<label for=${this.name}>${this.label}</label>
      <input id=${this.name} type="text" autocomplete="off" maxlength=${this.field.longest} .value=${this.value}
        aria-invalid=${this.invalid} aria-describedby="under"
        @change=${e=>this.change(e.target.value.trim())}>
      ${this.under("")}`}};customElements.define("jw-text-field",Zo);function I(s,e,t,n=""){let{type:a}=s.fieldOf(e),{options:i,entries:r}=s.wordsOf(e);return e.endsWith(".touchstone")?l`<jw-file-field name=${e} .value=${t} .error=${n}></jw-file-field>`:a==="boolean"?l`<jw-switch-field name=${e} .value=${t} .error=${n}></jw-switch-field>`:a==="choice"||i||r?l`<jw-choice-field name=${e} .value=${t} .error=${n}></jw-choice-field>`:a==="number"?l`<jw-number-field name=${e} .value=${t} .error=${n}></jw-number-field>`:l`<jw-text-field name=${e} .value=${t} .error=${n}></jw-text-field>`}var D=s=>Object.fromEntries(Object.entries(s.detail.changes).map(([e,t])=>[e.split(".").at(-1),t]));var el=class extends w({choices:m(u),sets:m(u),of:{type:String},hint:{type:String}},Z){static styles=[...Z.styles,b`
      fieldset { margin: 0; padding: 0; border: 0; min-width: 0; }
      div { display: flex; flex-wrap: wrap; gap: var(--space-1); }
      .set { border-style: dashed; }
    `];constructor(){super(),this.of="",this.hint=""}render(){return l`<fieldset id=${this.name} aria-describedby="under">
      <legend>${this.label}${this.of}</legend>
      <div>
        ${this.choices.filter(({hidden:e})=>!e).map(({id:e,name:t})=>l`<button class="choice" value=${e} aria-pressed=${this._chosen.includes(e)}
                @click=${this._toggle}>${t}</button>`)}
        ${this.sets.map(e=>l`<button class="choice set" aria-pressed=${e.value===null?this.value===null:p}
            @click=${()=>this.change(e.value)}>${e.words}</button>`)}
      </div>
      ${this.under(this.hint)}
    </fieldset>`}get _chosen(){return this.value??[]}_toggle(e){let t=e.currentTarget.value,n=new Set(this._chosen);n.delete(t)||n.add(t),n.size>0?this.change(this.choices.map(a=>a.id).filter(a=>n.has(a))):this.sets.some(a=>a.value===null)?this.change(null):this.sets.some(a=>a.value?.length===0)&&this.change([])}};customElements.define("jw-toggles-field",el);var Ct={rigs:"rig",antennas:"antenna"},tl={rigs:qh,antennas:Ch},lw={rigs:{name:"",power_w:100},antennas:{name:"",load:{kind:"vswr",vswr:1.5}},gear:{name:"",family:"n",gender:"jack",highest_frequency_hz:54e6,power_w:100}},dw=s=>Object.fromEntries(Object.entries(s).filter(([,e])=>e!==null)),Mp=(s,{settings:e,...t})=>({...s,...t,settings:{...s.settings,...e}}),fi=(s,e)=>s[e].length>=Ga[e];function gi(s,e,t=lw[e]){let n=[...s[e],t],a={[e]:n};return e in Ct&&s[Ct[e]]===-1?Mp(a,tl[e]({...s,...a},n.length-1)):a}function qp(s,e,t){let n={[e]:s[e].toSpliced(t,1)};if(!(e in Ct))return n;let a=s[Ct[e]];return a===t?{...n,[Ct[e]]:-1}:{...n,[Ct[e]]:a>t?a-1:a}}function Cp(s,e,t,n){let a={[e]:s[e].map((o,d)=>d===t?dw({...o,...n}):o)},i="power_w"in n||"load"in n,r=e in Ct&&s[Ct[e]]===t;return i&&r?Mp(a,tl[e]({...s,...a},t)):a}var bi=(s,e,t)=>tl[e](s,t);function sl({address:s,settings:e,units:t},n={}){let a=Object.fromEntries(Object.keys(e).map(i=>[i,void 0]));return{...Se,address:s,units:t,...n,settings:{...a,...n.settings}}}var nl=[{id:"club_hf",name:"Club station HF",story:"A contest club with a kilowatt amplifier, digital weekends, masts in the weather.",station:{name:"Club station HF",rigs:[{name:"Transceiver",power_w:100,behaviour:"transceiver",family:"uhf",gender:"jack"},{name:"Amplifier",power_w:1e3,behaviour:"valve_amplifier",family:"uhf",gender:"jack"}],rig:1,antennas:[{name:"Beam",load:{kind:"vswr",vswr:2}}],antenna:0,gear:[{name:"Amplifier",family:"uhf",gender:"jack",highest_frequency_hz:3e7,power_w:1e3},{name:"Tuner",family:"uhf",gender:"jack",highest_frequency_hz:3e7,power_w:1500},{name:"Dummy load",family:"n",gender:"jack",highest_frequency_hz:45e7,power_w:1e3},{name:"Feed line",family:"n",gender:"plug",highest_frequency_hz:3e7,power_w:1e3}],cables:["rg_213"],settings:{bands:["160m","80m","60m","40m","30m","20m","17m","15m","12m","10m"],power_w:1e3,mode:"rtty",vswr:2,exposure:"exposed",added_sealing:!0,matings_per_year:20,service_life_years:15,ambient_temperature_c:35,solar_irradiance_w_per_m2:800}}},{id:"vhf_uhf",name:"2 m / 70 cm",story:"A repeater-style FM station in a car and at home, long overs.",station:{name:"2 m / 70 cm",rigs:[{name:"FM transceiver",power_w:50,behaviour:"transceiver",family:"uhf",gender:"jack"}],rig:0,antennas:[{name:"Vertical",load:{kind:"vswr",vswr:1.5}}],antenna:0,gear:[{name:"FM transceiver",family:"uhf",gender:"jack",highest_frequency_hz:45e7,power_w:50},{name:"Handheld",family:"sma",gender:"plug",highest_frequency_hz:45e7,power_w:5},{name:"Vertical",family:"n",gender:"jack",highest_frequency_hz:45e7,power_w:50}],cables:["rg_58"],settings:{bands:["6m","2m","70cm","23cm"],band:"2m",power_w:50,mode:"fm",vibration:"vehicle",exposure:"sheltered",ambient_temperature_c:50,matings_per_year:50}}},{id:"microwave_bench",name:"23 cm / 3 cm portable bench",story:"Hilltop microwave gear on a trestle table, plugged and unplugged on every outing.",station:{name:"23 cm / 3 cm portable bench",rigs:[{name:"Transverter",power_w:5,behaviour:"keeps_forward",family:"sma",gender:"jack"}],rig:0,antennas:[{name:"Dish",load:{kind:"vswr",vswr:1.3}}],antenna:0,gear:[{name:"Transverter",family:"sma",gender:"jack",highest_frequency_hz:105e8,power_w:5},{name:"Dish",family:"n",gender:"jack",highest_frequency_hz:105e8,power_w:5},{name:"Power meter",family:"n",gender:"plug",highest_frequency_hz:105e8,power_w:1}],settings:{bands:["70cm","23cm","13cm","5cm","3cm"],band:"23cm",power_w:5,mode:"cw",vswr:1.3,exposure:"sheltered",altitude_m:1500,ambient_temperature_c:25,matings_per_year:150,condition:"worn",return_loss_asked_db:16}}}];var ne=b`
  .fields {
    display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: var(--space-1) var(--space-3);
    align-items: start;
  }
  .wide { grid-column: 1 / -1; }
  details { border-top: 1px solid var(--line); }
  summary {
    cursor: pointer; min-height: var(--target); align-content: center; font-weight: 600; font-size: var(--type-text);
  }
  summary small { font-weight: 400; color: var(--soft); }
  @media (max-width: 420px) { .fields { grid-template-columns: 1fr 1fr; } }
  @media (max-width: 350px) { .fields { grid-template-columns: minmax(0, 1fr); } }
`;var T=b`
  section { min-width: 0; }
  .panel {
    padding: var(--space-3); background: var(--card); border: 1px solid var(--line); border-radius: var(--round);
  }
  h2 { font-size: var(--type-lead); margin-bottom: var(--space-2); }
  h2 small { font-weight: 400; color: var(--soft); font-size: var(--type-small); }
  .legend { margin-top: var(--space-2); }
  @media print {
    :host { gap: 2mm; }
    .panel { padding: 1mm 2mm; break-inside: avoid; }
    h2 { margin-bottom: 1mm; }
  }
`,Ls=b`
  .pick {
    position: relative; display: grid; place-items: center; min-height: var(--target); padding: 0 var(--space-3);
    font-size: var(--type-small); border: 1px solid var(--edge); border-radius: var(--round); background: var(--card);
    cursor: pointer;
  }
  .pick:hover { border-color: var(--ink); }
  .pick:focus-within { outline: 3px solid var(--focus); outline-offset: 2px; }
  .pick input[type='file'] { position: absolute; inset: 0; width: 100%; height: 100%; opacity: 0; cursor: pointer; }
`;function _i(s,e,t){let{type:n,min:a,max:i}=s.fieldOf(e);return n!=="number"||typeof t!="number"||t>=a&&t<=i?"":`${s.labelOf(e)} is ${s.spoken(e,t)}; allowed: ${s.rangeOf(e)}.`}var al=class extends w({list:{type:String},items:m(u),used:m(u),one:{type:String},full:{type:Boolean},fieldsOf:m(u),wordsOf:m(u),_open:x(u),_refused:x(u)},O){static styles=[y,b`
      ul { list-style: none; padding: 0; display: grid; gap: var(--space-2); }
      li { background: var(--card); border: 1px solid var(--line); border-radius: var(--round); }
      .row { display: grid; grid-template-columns: auto minmax(0, 1fr); align-items: center; }
      .row:not(:has(.use)) { grid-template-columns: minmax(0, 1fr); }
      .use { display: grid; place-items: center; min-width: var(--target); min-height: 48px; cursor: pointer; }
      .use input { width: 20px; height: 20px; margin: 0; accent-color: var(--accent); }
      .toggle {
        display: block; width: 100%; min-height: 48px; padding: var(--space-1) var(--space-3);
      }
      .use + .toggle { padding-left: 0; }
      .name { display: block; font-weight: 600; overflow-wrap: anywhere; }
      .more { display: block; color: var(--soft); font-size: var(--type-small); line-height: 1.25; }
      .form {
        padding: var(--space-2) var(--space-3) var(--space-3); background: var(--sunk);
        border-radius: 0 0 var(--round) var(--round);
      }
      .fields {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: var(--space-1) var(--space-3);
        align-items: start;
      }
      .add { margin-top: var(--space-2); }
      @media (max-width: 420px) { .fields { grid-template-columns: 1fr 1fr; } }
    `];constructor(){super(),this._open=-1}render(){return l`${this.items.length>0?l`<ul>${this.items.map((e,t)=>this._row(e,t))}</ul>`:p}
      <button class="add" ?disabled=${this.full} @click=${this._add}>Add ${this.one}</button>`}_row(e,t){let[n,a]=this.wordsOf(e),i=t===this._open,r=()=>$(this,"jw-station-edit",{what:"use",list:this.list,at:t});return l`<li>
      <div class="row">
        ${this.used===void 0?p:l`<label class="use"><input type="checkbox" .checked=${t===this.used}
                aria-label="Use ${n}" @change=${r}></label>`}
        <button class="head toggle" aria-expanded=${i} @click=${()=>this._toggle(t)}>
          <span class="name">${n}</span>
          <span class="more">${t===this.used?`in use, ${a}`:a}</span>
        </button>
      </div>
      ${i?this._form(e,t):p}
    </li>`}_form(e,t){let{name:n,message:a=""}=this._refused??{},i=o=>n===o?a:"",r=()=>{this._open=-1,$(this,"jw-station-edit",{what:"remove",list:this.list,at:t})};return l`<div class="form">
      <div class="fields" @jw-change=${o=>this._changed(o,t)}>
        ${this.fieldsOf(e).map(([o,d])=>I(this.vocabulary,o,d,i(o)))}
      </div>
      <button class="remove" @click=${r}>Remove</button>
    </div>`}_toggle(e){this._open=this._open===e?-1:e,this._refused=void 0}_add(){this._open=this.items.length,$(this,"jw-station-edit",{what:"add",list:this.list})}_changed(e,t){if(e.stopPropagation(),e.detail.live)return;let[[n,a]]=Object.entries(e.detail.changes),i=_i(this.vocabulary,n,a);this._refused=i?{name:n,message:i}:void 0,i||$(this,"jw-station-edit",{what:"set",list:this.list,at:t,fields:D(e)})}};customElements.define("jw-station-list",al);var os="station",cw=["mode","power_w","power_is","vswr","band","frequency_hz","region","bands"],uw=["exposure","added_sealing","vibration","ambient_temperature_c","solar_irradiance_w_per_m2","altitude_m","matings_per_year","service_life_years","condition"],Rp=["transmit_share","on_time_s","off_time_s","system_impedance_ohm","return_loss_asked_db","cable","cable_diameter_m","added_resistance_ohm"],hw=142e5,pw={resonant:"known by its resonance",impedance:"known by its impedance",table:"known by a table of impedances",measured:"known by a measured file",dummy:"a dummy load"},mw=[{words:"not given",value:null}],fw=[{words:"none",value:[]}],il=class extends me{constructor(){super(),this._address=""}static styles=[y,ne,T,b`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); }
      .row { display: flex; flex-wrap: wrap; gap: var(--space-2); align-items: center; }
      .chips button { border-radius: 99px; }
      .panel { background: none; }
      .lists { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); }
      .double { grid-column: 1 / -1; }
      .wide { grid-column: 1 / -1; }
      h3 { margin: 0 0 var(--space-2); }
      details { border-top: 0; }
      .panel p { margin-top: var(--space-2); }
    `];render(){let{station:e}=this,t=nl.find(({station:{name:n,settings:a}})=>yw(e,n,a));return l`<div class="row">
        <jw-undo ?undo=${this.stationStore.canUndo(os)} ?redo=${this.stationStore.canRedo(os)}
          @jw-turn=${({detail:n})=>this.stationStore.turn(n.way,os)}></jw-undo>
      </div>
      <p class="quiet">Every view uses this station. This browser keeps it, and every link holds it.</p>
      <div class="row chips" role="group" aria-label="Example stations">
        <span class="quiet">Example stations</span>
        ${nl.map(n=>l`<button data-example=${n.id} aria-pressed=${n===t}
            @click=${()=>this._change(sl(this.station,n.station))}>${n.name}</button>`)}
        <button id="empty" @click=${()=>this._change(sl(this.station))}>Start empty</button>
      </div>
      ${t?l`<p class="quiet">${t.story}</p>`:p}
      <section class="panel" @jw-change=${this._told}>
        <div class="fields">
          <div class="double">${I(this.vocabulary,"shack.name",e.name)}</div>
          ${I(this.vocabulary,"shack.units",e.units)}
        </div>
      </section>
      <div class="lists" @jw-station-edit=${this._edited}>${this._lists()}</div>
      <section class="panel" @jw-change=${this._set}>
        <h2>How it is used</h2>
        <div class="fields">${cw.map(n=>this._field(n))}</div>
      </section>
      <section class="panel" @jw-change=${this._set}>
        <h2>Where it stands</h2>
        <div class="fields">${uw.map(n=>this._field(n))}</div>
        <details><summary>Rarely changed ${this._changedOf(Rp)}</summary>
          <div class="fields">${Rp.map(n=>this._field(n))}</div></details>
      </section>
      <section class="panel" @jw-change=${this._told}>
        <h2>Cables in use <small>offered first</small></h2>
        ${this._cables()}
      </section>
      <section class="panel" @jw-change=${this._told}>
        <h2>Links</h2>
        ${I(this.vocabulary,"shack.address",this._address||e.address,Zt(this._address))}
        <p class="quiet">Where links and the codes on labels lead when this page is a file on your disk. Empty: to
          this page itself.</p>
      </section>`}_lists(){let{antenna:e,antennas:t,gear:n,rig:a,rigs:i}=this.station,{families:r}=this.vocabulary.lists,o=({family:h,gender:f})=>[r.find(({id:_})=>_===h)?.name??h,f].join(" ").trim(),d=(h,f)=>_=>f.map(g=>[`${h}.${g}`,_[g]??null]),c=({name:h,power_w:f,family:_,gender:g})=>[h||"Transmitter",[C(f),o({family:_,gender:g})].filter(Boolean).join(", ")];return l`<section class="panel"><h2>Transmitters</h2>
        <jw-station-list list="rigs" one="a transmitter" .items=${i} .used=${a}
          ?full=${fi(this.station,"rigs")} .fieldsOf=${d("rig",gw)} .wordsOf=${c}></jw-station-list>
      </section>
      <section class="panel"><h2>Antennas</h2>
        <jw-station-list list="antennas" one="an antenna" .items=${t} .used=${e}
          ?full=${fi(this.station,"antennas")} .fieldsOf=${_w} .wordsOf=${ww}></jw-station-list>
        <p class="quiet">An antenna known by more than its SWR is described in the Line view and added from there.</p>
      </section>
      <section class="panel"><h2>Gear <small>its ports; kits start from them</small></h2>
        <jw-station-list list="gear" one="a port" .items=${n} ?full=${fi(this.station,"gear")}
          .fieldsOf=${d("port",bw)} .wordsOf=${h=>[h.name||o(h),`${o(h)}, up to ${M(h.highest_frequency_hz)}, ${C(h.power_w)}`]}></jw-station-list>
      </section>`}_cables(){let{cables:e}=this.vocabulary.lists,t=e.filter(({id:n})=>this.station.cables.includes(n)).map(({name:n})=>n);return l`<details><summary>${t.join(", ")||"none given"}</summary>
      <jw-toggles-field name="shack.cables" .choices=${e} .sets=${fw}
        .value=${this.station.cables}></jw-toggles-field></details>`}_valueOf(e){return Tn(this.station.settings,e,this.vocabulary.first.settings[e])}_changedOf(e){let t=e.filter(n=>n in this.station.settings).length;return t>0?l`<small>${t} set</small>`:p}_field(e){let t=`settings.${e}`,n=this._valueOf(e);if(e==="frequency_hz"&&this._valueOf("band")!==null)return p;if(e==="cable_diameter_m"&&this._valueOf("cable")!==null)return p;if(e==="bands"){let a=String(this._valueOf("region")),i=this.vocabulary.lists.bands.map(r=>({...r,hidden:!r.regions.includes(a)}));return l`<jw-toggles-field class="wide" name=${t} .choices=${i} .sets=${mw}
        .value=${n}></jw-toggles-field>`}return I(this.vocabulary,t,n,_i(this.vocabulary,t,n))}_change(e,t=!1){this.stationStore.change(os,e,void 0,t)}_set(e){e.stopPropagation();let t=D(e);"band"in t&&(t.frequency_hz=t.band===null?hw:null);let{first:n}=this.vocabulary,a=Object.entries(t).map(([i,r])=>[i,r===n.settings[i]?null:r]);this._change({settings:Object.fromEntries(a)},e.detail.live)}_told(e){e.stopPropagation();let t=D(e);this._address="address"in t&&Zt(t.address)?t.address:"",this._address?this.requestUpdate():this._change(t)}_edited({detail:{what:e,list:t,at:n,fields:a}}){let{station:i}=this;switch(e){case"add":return this._change(gi(i,t));case"remove":return this._change(qp(i,t,n));case"use":return this._change(bi(i,t,n===i[t==="rigs"?"rig":"antenna"]?-1:n))}let{vswr:r,...o}=a,d=r===void 0?{}:{load:{...i.antennas[n].load,vswr:r}};this._change(Cp(i,t,n,{...o,...d}))}},gw=["name","power_w","behaviour","family","gender"],bw=["name","family","gender","highest_frequency_hz","power_w","impedance_ohm"],_w=({name:s,load:e})=>[["antenna.name",s],...e.kind==="vswr"?[["load_vswr.vswr",e.vswr]]:[]],ww=({name:s,load:e})=>[s||"Antenna",pw[e.kind]??`SWR ${j(e.vswr)}`],yw=(s,e,t)=>s.name===e&&Object.entries(t).every(([n,a])=>JSON.stringify(s.settings[n])===JSON.stringify(a));customElements.define("jw-station-panel",il);var Np=s=>{let e=[...s.querySelectorAll("*")].filter(({shadowRoot:t})=>t);return[s,...e.flatMap(({shadowRoot:t})=>Np(t))]},vw=()=>Np(document).some(s=>s.querySelector(":modal")),zn=class extends w({_view:x(u),_report:x(u),_copied:x(u)}){static styles=[y,b`
      dialog {
        position: fixed; inset: auto var(--space-3) calc(var(--foot) + var(--space-3)); z-index: 40; width: auto;
        max-width: 640px; margin: 0 auto;
        padding: var(--space-3) var(--space-4); color: inherit; background: var(--alarm-wash);
        border: 1px solid var(--alarm);
        border-radius: var(--round); box-shadow: 0 6px 30px #0004;
      }
      .acts { display: flex; flex-wrap: wrap; gap: var(--space-2); margin-top: var(--space-2); }
      textarea {
        width: 100%; min-height: 8rem; margin-top: var(--space-2); font: var(--type-small)/1.4 ui-monospace, monospace;
      }
      @media print { :host { display: none; } }
    `];constructor(){super(),this._view="",this._report="",this._copied=""}async show(e,t){Object.assign(this,{_view:e,_report:t,_copied:""}),await this.updateComplete,!this._dialog.open&&(vw()?this._dialog.showModal():this._dialog.show())}get _dialog(){return N(this.renderRoot,"dialog")}render(){return l`<dialog role="alertdialog" aria-labelledby="fault">
      <p id="fault" role="alert">${this._view?`Something went wrong in ${this._view}. What you entered is kept; nothing was sent anywhere.`:""}</p>
      <div class="acts">
        <button id="again" @click=${this._again}>Try again</button>
        <button id="report" @click=${this._copy}>Copy a report</button>
        <button @click=${this._close}>Close</button>
      </div>
      <p class="quiet" role="status">${this._copied==="copied"?"Copied: version, view and fault.":""}</p>
      ${this._copied==="by hand"?l`<textarea readonly aria-label="Report to copy by hand" .value=${this._report}
              @focus=${({target:e})=>e.select()}></textarea>`:p}
    </dialog>`}async _copy(){try{await navigator.clipboard.writeText(this._report),this._copied="copied"}catch{this._copied="by hand"}}_again(){this._close(),$(this,"jw-again")}_close(){this._dialog.close(),this._view=""}};customElements.define("jw-fault",zn);var $w=/\b(?:file|https?|blob|data):[^\s()]*?([^\s()/]*?)(?:[?#][^\s():]*)?(:\d+:\d+)?(?=[\s)]|$)/g,xw=/"(?:[^"\\]|\\.)*"|“[^”]*”/g,Lp=s=>s.replace($w,"$1$2").replace(xw,'"…"');function zp(s,{version:e,view:t}){let n=Lp(`${s.name}: ${s.message}`).slice(0,300),i=(s.stack??"").split(`
`).filter(r=>/^\s*at |@/.test(r)&&!r.includes(s.message)).slice(0,12).map(r=>Lp(r).trim());return[`Jointwise ${e}`,`View: ${t}`,`Message: ${n}`,...i].join(`
`)}var rl=new Set,Pp=new WeakSet,kw=s=>!(s instanceof Error)||s.name==="AbortError";function Ip(s,e){let t=new zn,n=a=>{kw(a)||Pp.has(a)||(Pp.add(a),!rl.has(a.message)&&(rl.add(a.message),t.show(e(),zp(a,{version:H.version,view:e()}))))};t.addEventListener("jw-again",()=>{rl.clear(),s.drawAnew()}),window.addEventListener("error",({error:a})=>n(a)),window.addEventListener("unhandledrejection",({reason:a})=>n(a)),document.body.append(t)}var ol=class extends w({label:{type:String},rest:{type:String},content:m(u),_open:x(u)}){static styles=[y,b`
      :host { position: relative; }
      .panel {
        position: absolute; right: 0; top: calc(100% + var(--space-1)); z-index: 25; display: grid;
        gap: var(--space-half); width: max-content; min-width: 15rem; max-width: calc(100vw - var(--space-6));
        max-height: calc(100dvh - 8rem); overflow: auto; padding: var(--space-2); background: var(--card);
        border: 1px solid var(--edge); border-radius: var(--round); box-shadow: 0 6px 30px #0004;
      }
      .panel[hidden] { display: none; }
      .panel :is(button, .button) { width: 100%; text-align: left; justify-content: start; }
      h2 {
        padding: var(--space-2) var(--space-3) 0; color: var(--soft); font-size: var(--type-fine); font-weight: 600;
      }
      .row { display: flex; gap: var(--space-1); padding: 0 var(--space-3); }
      .row button { text-align: center; }
      .file { position: relative; cursor: pointer; }
      .file:focus-within { outline: 3px solid var(--focus); }
      .file input { position: absolute; inset: 0; opacity: 0; cursor: pointer; }
      @media (max-width: 640px) { #button .rest { position: absolute; clip-path: inset(50%); } }
      @media print { :host { display: none; } }
    `];constructor(){super(),this.label="",this.rest="",this._open=!1,this._pressed=e=>{this._open&&!e.composedPath().includes(this)&&(this._open=!1)}}connectedCallback(){super.connectedCallback(),window.addEventListener("pointerdown",this._pressed)}disconnectedCallback(){super.disconnectedCallback(),window.removeEventListener("pointerdown",this._pressed)}render(){return l`<div @keydown=${this._escaped} @focusout=${this._left}>
      <button id="button" aria-expanded=${this._open} aria-controls="panel" @click=${()=>this._open=!this._open}
        >${this.label}${this.rest?l`<span class="rest"> ${this.rest}</span>`:p}</button>
      <div id="panel" class="panel" role="group" aria-labelledby="button" ?hidden=${!this._open}
        @click=${this._done} @change=${this._done}>${this._open?this.content():p}</div>
    </div>`}_done({type:e,target:t}){(e==="change"?t.type==="file":t.closest("button:not([aria-pressed]), a"))?this._close():this.requestUpdate()}_escaped(e){e.key!=="Escape"||!this._open||(e.preventDefault(),this._close())}_left({relatedTarget:e}){e&&!this.renderRoot.contains(e)&&(this._open=!1)}_close(){this._open=!1,N(this.renderRoot,"#button").focus()}};customElements.define("jw-menu",ol);var Sw=s=>({target:e})=>{let[t]=e.files;t&&s(t),e.value=""},Wp=({id:s,words:e,run:t,take:n,accept:a})=>n?l`<label class="quiet button file">${e}<input id=${s} type="file" accept=${a}
        @change=${Sw(n)}></label>`:l`<button id=${s} class="quiet" @click=${t}>${e}</button>`;var Bp=(s,e)=>Object.fromEntries(Object.entries(e).filter(([,t])=>!s.includes(t))),pt=s=>Bp([null,void 0],s),mt=s=>Bp([null,void 0,""],s);var dl=["exposure","vibration","added_sealing"],ll=s=>Object.fromEntries(dl.map(e=>[e,s[e]])),Hp=(s,e)=>dl.every(t=>s[t]===e[t]);function Pn(s,{installations:e}){let t=e.find(({id:n})=>n===s.installation);return t&&Hp(s,e[0])?{...s,...ll(t)}:s}function Up(s,e,{installations:t}){if("installation"in s){let a=t.find(({id:i})=>i===s.installation);return a?{...ll(a),...s}:s}if(!dl.some(a=>a in s))return s;let n={...ll(Pn(e,{installations:t})),...s};return Hp(n,t[0])?{...n,installation:t[0].id}:n}var Fp=({requests:{choose:s}})=>({choose:s});function Dp(s,e){let{installation:t,...n}=Pn(s,e.lists);return{...pt(n),bands:as(s,e)}}var wi=(s,e)=>as(s,e).length+s.frequencies_hz.length===0?"Pick a band, or type a spot frequency.":"";var Gp=(s,e)=>JSON.stringify(s)===JSON.stringify(e),yi=(s,e)=>Object.fromEntries(Object.entries(s).filter(([t])=>e(t))),Ze=class extends w({_own:x(u)},Ot){_begin(){this._own=this._firstOwn}get _first(){return this.vocabulary.first[this._name]}get _firstOwn(){return yi(this._first,e=>this._ownNames.includes(e))}get _state(){return An(this._own,this.station,this._first)}get _fragment(){let{views:e}=this.vocabulary,t=this._firstOwn;return this._name===e[0]?Xe(this._own,t):xh(this._name,this._own,t)}_restore(e){let t=this._firstOwn,n=yi(this.vocabulary.fields[this._name],r=>this._ownNames.includes(r)),{state:a,unknown:i}=this._readOwn(e,n,t);return Gp(a,this._own)||(this._own=a),{unknown:i}}_readOwn(e,t,n){return kh(e,t,n)}_change(e,t={}){let n=r=>this._ownNames.includes(r),a={...this._own,...yi(e,n)},i=this._settings(yi(e,r=>!n(r)),this._first);this._put(Gp(a,this._own)?this._own:a,Object.keys(i).length>0?{settings:i}:{},typeof t=="boolean"?{live:t}:t)}reset(){let e=Object.keys(this._first).filter(a=>!this._ownNames.includes(a)),t=Rh(this.station),n=Object.fromEntries(e.map(a=>[a,t[a]]));this._put(this._firstOwn,{settings:n})}};var cl=class extends w({cautions:m(u),heading:{type:String}}){static styles=[y,b`
      section {
        padding: var(--space-3) var(--space-4); border-left: 4px solid var(--alarm); background: var(--alarm-wash);
        border-radius: 4px;
      }
      h2 { margin-bottom: var(--space-1); font-size: var(--type-text); }
      ul { padding-left: 1.1em; font-size: var(--type-text); }
      li + li { margin-top: var(--space-1); }
      @media print {
        section { padding: 1mm 3mm; break-inside: avoid; }
        h2, ul { font-size: var(--type-small); }
        h2 { margin: 0; }
        ul { columns: 2; column-gap: 6mm; line-height: 1.25; }
        li + li { margin: 0; }
      }
    `];constructor(){super(),this.cautions=[],this.heading="Cautions"}render(){return l`<section>
      <h2>${this.heading}</h2>
      <ul>
        ${this.cautions.map(e=>l`<li>${e}</li>`)}
      </ul>
    </section>`}};customElements.define("jw-cautions",cl);var be=s=>s?.field?.split(/[[.]/)[0]??"";var _e=(s,e)=>s.includes(e)?s:[...s,e].sort((t,n)=>t-n),In=(s,e)=>s.reduce((t,n)=>Math.abs(n-e)<Math.abs(t-e)?n:t);var jw=["use","bands","frequencies_hz","installation","port","largest_diameter_m","plan","power_w","margin_asked_db","dc_current_a","dc_voltage_v"],Ew=s=>s.low_hz===s.high_hz;function Ow(s,e,t){return s.port_binds?t.choices.find(({family:n})=>n===e.port):s}function Tw(s,{columns:e}){let t=e.reduce((n,a)=>a.high_hz>n.high_hz?a:n);return e.find(({name:n})=>n===s.binding_column)??t}var Aw=s=>Object.fromEntries(Object.entries(s).filter(([e])=>!jw.includes(e)));function Kp(s,e,t,n,a=n.bands){let i=Ow(s,e,t),r=Tw(i,t),o=Ew(r)?{frequency_hz:r.high_hz,frequencies_hz:[r.high_hz]}:{band:r.id,bands:a.includes(r.id)?a:[...a,r.id]},d={power_w:t.power_w,powers_w:_e(n.powers_w,t.power_w)};return Xe({...n,...Aw(e),...o,...d,family:i.family},n)}var Mw=s=>/[",\r\n]/.test(s)?`"${s.replaceAll('"','""')}"`:s,qw=s=>typeof s=="string"&&/^\s*[=+\-@]/.test(s)?`'${s}`:String(s??"");function Rt(s,e){return[s.map(([n])=>n),...e.map(n=>s.map(([,a])=>Mw(qw(a(n)))))].map(n=>`${n.join(",")}\r
`).join("")}var Cw=[["family",s=>s.name],["passes",s=>s.passes],["rank",s=>s.rank],["margin_db",s=>s.margin_db],["margin_high_db",s=>s.margin_high_db],["undecided",s=>s.undecided],["set_by",s=>s.port_binds?"port":s.binding],["on",s=>s.port_binds?null:s.binding_column],["return_loss_db",s=>s.return_loss_db],["return_loss_high_db",s=>s.return_loss_high_db],["loss_db",s=>s.loss_db],["diameter_m",s=>s.diameter_m],["coupling",s=>s.coupling],["torque_nm",s=>s.torque_nm],["needs_adapter",s=>s.needs_adapter],["has_margin_asked",s=>s.has_margin_asked],["why",s=>s.reasons.join("; ")],["dc_stands_a",s=>s.dc_stands_a],["matings_needed",s=>s.wear.needed],["matings_good_for",s=>s.wear.good_for],["wears_out_after_years",s=>s.wear.runs_out_after_years],["stands",s=>s.weather.stands],["stands_sealed",s=>s.weather.stands_sealed],["from_pack",s=>s.pack],["missed",s=>s.rejections.map(({sentence:e})=>e).join(" ")]],Rw={diameter_m:["diameter_in",s=>Mt(s.diameter_m*1e3,"mm",3)],torque_nm:["torque_in_lb",s=>Mt(s.torque_nm,"N·m",3)]};function Vp(s){let e=Ns()==="us",t=Cw.map(n=>e&&Rw[n[0]]||n);return Rt(t,s.choices)}var ul=class extends w({zero:{type:String}},rs){constructor(){super(),this.zero=""}render(){return l`<label for=${this.name}>${this.label}</label>
      <input id=${this.name} type="text" autocomplete="off" spellcheck="false" .value=${this.textOf(this.value)}
        aria-invalid=${this.invalid} aria-describedby="under" @change=${this._typed}>
      ${this.under(this._allowed)}`}get _allowed(){let e=this.zero?`; “${this.zero}” is 0`:"";return`${this.vocabulary.rangeOf(this.name)} each, spaces between${e}`}textOf(e){let t=n=>n===0&&this.zero?this.zero:hi(this.vocabulary.shown(this.name,n));return e.map(t).join("  ")}gathered(e){return[...new Set(e)].sort((t,n)=>t-n)}_typed({target:{value:e}}){let t=e.split(/\b/).map(n=>n===this.zero?"0":n);this.read(e,Op(t.join(""),this.unit),this._allowed)}};customElements.define("jw-list-field",ul);var hl=[["carries","What it carries",["use","power_w","mode","vswr","margin_asked_db","dc_current_a","dc_voltage_v","bands","frequencies_hz"]],["sits","Place and weather",["installation","exposure","added_sealing","vibration","ambient_temperature_c","solar_irradiance_w_per_m2","altitude_m"]],["used","How it is used",["matings_per_year","service_life_years","condition"]],["meets","What it must fit",["cable","cable_diameter_m","port","largest_diameter_m","system_impedance_ohm","return_loss_asked_db","region"]]],Nw="The place sets weather, sealing and vibration together; change any of them afterwards.",Lw=[{words:"none: spot frequencies only",value:[]}],zw="(min-width: 1180px)",Pw=(s,e)=>s==="cable_diameter_m"&&e.cable!==null||["power_w","margin_asked_db"].includes(s)&&e.use==="receive"||s==="dc_voltage_v"&&e.dc_current_a===0,Iw=(s,e)=>JSON.stringify(s)===JSON.stringify(e),pl=class extends w({state:m(u),refusal:m(u),_open:x(u)},O){static styles=[y,ne,b`:host {
      padding: var(--space-3); background: var(--card); border: 1px solid var(--line); border-radius: var(--round);
    }
    .plan { max-width: 420px; }`];constructor(){super(),this._open=new Set(matchMedia(zw).matches?hl.map(([e])=>e):[])}willUpdate(e){if(!e.has("refusal")||!this.refusal)return;let t=hl.find(([,,n])=>n.includes(be(this.refusal)));t&&(this._open=new Set([...this._open,t[0]]))}render(){return l`<div @jw-change=${this._changed}>
      <h2 class="unseen">Demands</h2>
      <div class="plan">${this._field("plan")}</div>
      ${hl.map(e=>this._group(e))}
    </div>`}_group([e,t,n]){let a=this._open.has(e),r=n.filter(o=>!Iw(this.state[o],this.vocabulary.first.choose[o])).map(o=>this.vocabulary.spoken(`choose.${o}`,this.state[o])).join(" · ");return l`<details data-group=${e} ?open=${a} @toggle=${o=>this._toggled(e,o.target.open)}>
      <summary>${t} ${r&&!a?l`<small>${r}</small>`:p}</summary>
      <div class="fields">${a?n.map(o=>this._field(o)):p}</div>
      ${a&&e==="sits"?l`<p class="quiet">${Nw}</p>`:p}
    </details>`}_field(e){let t=Pn(this.state,this.vocabulary.lists);if(Pw(e,t))return p;let n=`choose.${e}`,{refusal:a}=this,r=a&&be(a)===e?a.message:"";if(e==="bands"){let o=this.vocabulary.lists.bands.map(d=>({...d,hidden:!d.regions.includes(String(t.region))}));return l`<jw-toggles-field class="wide" name=${n} .choices=${o} .sets=${Lw}
        .value=${t.bands} .error=${r||wi(t,this.vocabulary)}></jw-toggles-field>`}return e==="frequencies_hz"?l`<jw-list-field class="wide" name=${n} .value=${t.frequencies_hz}
        .error=${r}></jw-list-field>`:I(this.vocabulary,n,t[e],r)}_toggled(e,t){if(this._open.has(e)===t)return;let n=new Set(this._open);n.delete(e)||n.add(e),this._open=n}_changed(e){e.stopPropagation();let t=Up(D(e),this.state,this.vocabulary.lists);$(this,"jw-choose-change",{changes:t,live:e.detail.live})}};customElements.define("jw-choose-form",pl);var Ne=[{id:"over",words:"over the limit",from:-1/0,light:["#dca64f","#1f1607"],dark:["#935f1d","#fffaf2"],print:["#dcb273","#000000"]},{id:"at",words:"at the limit",from:0,light:["#f8e8c8","#2a2010"],dark:["#d9c79f","#1c160a"],print:["#faf0dc","#000000"]},{id:"tight",words:"tight",from:1,light:["#d3e6f5","#10202e"],dark:["#a9c4d8","#0c161f"],print:["#e2eef8","#000000"]},{id:"fine",words:"fine",from:3,light:["#a3caeb","#0c1c2b"],dark:["#6f9cc4","#07121c"],print:["#c6dff2","#000000"]},{id:"ample",words:"ample",from:10,light:["#5f9fd4","#061523"],dark:["#2f6598","#ffffff"],print:["#a0c8e8","#000000"]}];var Yp=s=>Ne.findLast(({from:e})=>s>=e)??Ne[0],G=s=>Yp(s).id,zs=s=>Yp(s).words;function Ww(s){let e=Ne.findIndex(n=>n.id===s),{from:t}=Ne[e];return{from:Number.isFinite(t)?t:void 0,to:Ne[e+1]?.from}}function vi(s){let{from:e,to:t}=Ww(s);return e===void 0?`below ${t}`:t===void 0?`above ${e}`:`${e} to ${t}`}var z=[...Ne.map(({id:s})=>s),"holds"].map(s=>`[data-step="${s}"]{background-color:var(--step-${s});color:var(--step-${s}-ink)}`).join(`
`);var ce=s=>s?l` <span class="pack">from pack ${s}</span>`:p,ml=s=>s?l` <span class="pack sign" title="From pack ${s}">◆<span class="unseen"> from pack ${s}</span></span>`:p;function $i(s,e=[]){let[t,n]=s.split(".");return n===void 0?void 0:e.find(({id:a})=>a===t)?.name}var ae=b`
  .pack {
    display: inline-block; max-width: 100%; padding: 0 var(--space-2); border: 1px dashed var(--edge);
    border-radius: 99px;
    color: var(--soft); font-size: var(--type-fine); font-weight: 500; overflow-wrap: anywhere;
  }
  .pack.sign { padding: 0 var(--space-half); border: 0; font-size: var(--type-fine); }
`;var Ps={contact:"Heat of the contact",cable:"Heat of the cable",voltage:"Voltage"},xi={contact:"its contact",cable:"its cable",voltage:"voltage"};var Jp="match",Bw={te11:"TE11",cable_te11:"TE11",no_figures:"freq",receive_only:"rx only",no_heat_room:"hot",immersion:"wet",house:"house",match:"RL 8"},Xp={customary_frequency:["f","above its usual frequency"],weather:["w","not sealed for this weather"],vibration:["v","its coupling does not suit this vibration"],wear:["s","more swaps than it is made for"],cable_fit:["c","not made for this cable diameter"],cold:["t","too cold for it"],match_doubt:["m","match in doubt: only the generous figures give the return loss asked for"]},Hw="↓",Uw="?",Qp=s=>Bw[s.id]??s.name,Fw=s=>Xp[s.id]?.[0]??s.name[0],Dw=[],Gw=(s,e)=>e===0?Dw:s.filter((t,n)=>e>>n&1);function $e(s,e,t,n){let a=s.refused_by[e][t][n],i=s.margin_db[e][t][n],[r,o]=s.return_loss_db[e][t];return{family:s.families[e],column:s.columns[t],power:s.powers_w[n],margin:i,high:s.margin_high_db[e][t][n],limit:s.limits[s.binding[e][t][n]],returnLoss:r,returnLossHigh:o,refusedBy:a===-1?void 0:s.gates[a],marks:Gw(s.gates,s.marks[e][t][n]),undecided:s.undecided[e][t][n],lowerFromMemory:s.rating_below[e]&&i!==null,largest:s.largest_power_w[e][t]}}var Kw=s=>Math.round(Number(s)),Is=s=>`RL ${Kw(s)}`;function He(s){return s.refusedBy?"refused":s.margin===null?"holds":G(s.margin)}function ls(s){let e=s.marks.map(t=>[Fw(t),Xp[t.id]?.[1]??t.name]);return s.undecided&&e.push([Uw,"uncertain: the sources disagree on which side of the limit it lies"]),s.lowerFromMemory&&e.push([Hw,"a power figure from memory is lower"]),e}var ki=s=>ls(s).map(([e])=>e).join("");function ft(s){return s.refusedBy&&s.refusedBy.id!==Jp?Qp(s.refusedBy):s.margin===null?Is(s.returnLoss):A(s.margin)}function fl(s,e){return s.refusedBy||e==="margin"?ft(s):s.largest===null?"none":Nn(s.largest)}function Zp(s){let e=`${s.family.name}, ${s.column.name}, ${C(s.power)}`,t=s.marks.map(n=>`${n.name}: ${s.family.gate_reasons[n.id]}`);return[...Vw(e,s),...t].join(". ")}function Vw(s,e){let{refusedBy:t}=e,n=`${Is(e.returnLoss)}, return loss in dB`;if(t?.id===Jp)return[`${s}: refused, ${n}, less than asked for`];if(t)return[`${s}: refused, ${Qp(t)}, ${t.name}`,e.family.gate_reasons[t.id]];if(e.margin===null)return[`${s}: ${n}; no power to carry`];let a=[`${s}: margin ${A(e.margin)} dB, ${zs(e.margin)}, limited by ${xi[e.limit]} at ${M(e.column.high_hz)}`,`between ${A(e.margin)} and ${A(e.high)} dB, by how good the parts are`,e.largest===null?"no power is safe":`safe up to ${Nn(e.largest)} watts`];return e.undecided&&a.push("Uncertain: the sources disagree on which side of the limit it lies"),e.lowerFromMemory&&a.push("A power figure from memory is lower"),a}var gl={indoor:"indoors only",sheltered:"damp, no rain",exposed:"weatherproof when mated",immersed:"under water"},Yw=.01;function bl(s,e){if(s.rank===null)return"";let t=e.filter(({rank:n})=>n===s.rank).length>1;return`${s.rank}${t?"=":""}`}var em=({rejections:s})=>s.find(({hard:e})=>e);function tm(s){return s.margin_db!==null?`${A(s.margin_db)} dB`:(em(s)?.demand??"match")==="match"?Is(s.return_loss_db):"refused"}function sm(s){return s.margin_db!==null?G(s.margin_db):em(s)?"refused":"holds"}function nm(s){return s.margin_db===null?"":[s.margin_high_db===null?"":`up to ${A(s.margin_high_db)} dB`,s.undecided?"uncertain":""].filter(Boolean).join(", ")}function am(s){return s.margin_db===null?"":s.port_binds?"limited by the joint it plugs into":`limited by ${xi[s.binding]} on ${s.binding_column}`}var im=s=>`${s<Yw?j(s,2):s.toFixed(3)} dB`,rm=s=>ns(s);function om({coupling:s,torque_nm:e,by_hand:t}){return t?`${s}, by hand`:e>0?`${s}, ${gp(e)}`:s}var lm=({needed:s,good_for:e})=>`${j(s,4)} matings of ${j(e,5)}`;function dm({stands:s,stands_sealed:e}){return s===e?gl[s]:`${gl[s]}; weatherproof once sealed`}function cm({reasons:s}){let e=s.join("; ");return e.charAt(0).toUpperCase()+e.slice(1)}var um=({weather:s})=>Object.keys(gl).indexOf(s.stands);function hm(s,e){let t=e.choices.find(({family:a})=>a===s);if(!t)return"";if(!t.passes){let{length:a}=t.rejections;return`Your plan, ${t.name}, misses ${a===1?"one demand":`${a} demands`}.`}if(t.rank===1)return`Your plan, ${t.name}, meets every demand, and nothing comes before it.`;let n=`rank ${bl(t,e.choices)} of ${e.passing.length}`;return`Your plan, ${t.name}, meets every demand: ${n} (${t.reasons.join("; ")}).`}var Si=[{id:"rank",head:"Rank",by:({rank:s})=>s??1/0},{id:"name",head:"Connector",by:({name:s})=>s},{id:"why",head:"Why"},{id:"margin",head:"Margin",by:s=>s.margin_db??s.return_loss_db??-1/0,most:!0},{id:"loss",head:"Loss",by:({loss_db:s})=>s},{id:"size",head:"Size",by:({diameter_m:s})=>s},{id:"coupling",head:"Coupling",by:({torque_nm:s})=>s},{id:"matings",head:"Matings",by:({wear:s})=>s.good_for,most:!0},{id:"weather",head:"Weather",by:um,most:!0}],pm={id:"rank",down:!1},mm=s=>Si.find(e=>e.id===s)??Si[0],fm=(s,e)=>({id:e,down:s.id===e?!s.down:mm(e).most===!0});function gm(s,{id:e,down:t}){let{by:n}=mm(e);if(!n||e==="rank"&&!t)return s;let a=t?-1:1;return s.toSorted((i,r)=>a*Jw(n(i),n(r)))}var Jw=(s,e)=>typeof s=="string"?s.localeCompare(e,"en",{numeric:!0}):s===e?0:s-e;var _l=class extends w({choices:m(u),all:m(u),plan:{type:String},heading:{type:String},linkOf:m(u),_order:x(u)}){static styles=[y,ae,R(z),b`
      table { width: 100%; border-collapse: collapse; font-size: var(--type-small); }
      th, td {
        padding: var(--space-1) var(--space-3) var(--space-1) 0; text-align: left; border-bottom: 1px solid var(--line);
      }
      thead th { color: var(--soft); font-weight: 500; }
      [aria-sort='ascending'] button::after { content: ' ▲'; }
      [aria-sort='descending'] button::after { content: ' ▼'; }
      .why { max-width: 24em; }
      tbody th a {
        display: inline-grid; align-items: center; min-height: var(--target); min-width: var(--target);
        font-size: var(--type-text);
        font-weight: 700;
      }
      .chip { min-width: 4.6em; }
      .number { white-space: nowrap; }
      .rank { font-size: var(--type-lead); font-weight: 700; }
      small { display: block; color: var(--soft); line-height: 1.3; font-weight: 400; }
      .mark {
        display: inline-block; white-space: nowrap; margin: 0 var(--space-1) var(--space-half) 0;
        padding: 0 var(--space-2); border: 1px solid var(--edge);
        border-radius: 99px; font-size: var(--type-fine); font-weight: 500; color: inherit;
      }
      .mark.plan { background: var(--accent-wash); border-color: var(--accent); }
      ul { padding-left: 1.1em; }
      .missed td, .missed th { vertical-align: top; }
      @media (max-width: 760px) {
        .missed thead { position: absolute; clip-path: inset(50%); }
        table, tbody, thead { display: block; }
        .passing thead tr { display: flex; flex-wrap: wrap; align-items: center; gap: 0 var(--space-3); }
        .passing thead tr::before { content: 'Order by: '; }
        .passing thead th { padding: 0; border: 0; }
        .passing thead th:not([aria-sort]) { display: none; }
        tbody tr {
          display: grid; grid-template-columns: 2.2em 1fr; align-items: center; padding: var(--space-2) 0;
          border-bottom: 1px solid var(--edge);
        }
        td, tbody th { padding: var(--space-half) 0; border: 0; }
        td:not(.rank), .missed th { grid-column: 1 / -1; }
        td[data-head]::before { content: attr(data-head) ': '; color: var(--soft); }
        .margin { display: flex; flex-wrap: wrap; gap: 0 var(--space-3); align-items: center; }
        tbody th { display: flex; flex-wrap: wrap; gap: 0 var(--space-3); align-items: center; }
        .margin::before { content: none !important; }
      }
      @media print {
        tr { break-inside: avoid; }
        tbody th a { min-height: 0; color: inherit; text-decoration: none; }
        th, td {
          padding: 0.4mm var(--space-2) 0.4mm 0; font-size: var(--type-fine); line-height: 1.2; white-space: nowrap;
        }
        button.head { min-height: 0; padding: 0; }
        td:is(.why, :last-child) { white-space: normal; }
        th > div, td.margin small { display: inline; }
      }
    `];constructor(){super(),this._order=pm}render(){return this.choices.length>0&&this.choices.every(({passes:e})=>!e)?this._missed():this._passing()}_passing(){return l`<table role="table" class="passing" aria-label=${this.heading}>
      <thead role="rowgroup"><tr role="row">${Si.map(e=>this._head(e))}</tr></thead>
      <tbody role="rowgroup">
        ${gm(this.choices,this._order).map(e=>l`<tr role="row" data-family=${e.family}>
            <td role="cell" class="rank"><span class="unseen">Rank</span> ${bl(e,this.all)}</td>
            ${this._name(e)}
            <td role="cell" class="why">${cm(e)}</td>
            ${this._margin(e)}
            <td role="cell" class="number" data-head="Loss">${im(e.loss_db)}</td>
            <td role="cell" class="number" data-head="Size">${rm(e.diameter_m)}</td>
            <td role="cell" data-head="Coupling">${om(e)}</td>
            <td role="cell" data-head="Matings">${lm(e.wear)}</td>
            <td role="cell" data-head="Weather">${dm(e.weather)}</td>
          </tr>`)}
      </tbody>
    </table>`}_head({id:e,head:t,by:n}){if(!n)return l`<th role="columnheader" scope="col">${t}</th>`;let{id:a,down:i}=this._order;return l`<th role="columnheader" scope="col" aria-sort=${e===a?i?"descending":"ascending":"none"}><button class="head"
      @click=${()=>this._order=fm(this._order,e)}>${t}</button></th>`}_missed(){let e=["Connector","Margin","Demands missed"];return l`<table role="table" class="missed" aria-label=${this.heading}>
      <thead role="rowgroup"><tr role="row">${e.map(t=>l`<th role="columnheader" scope="col">${t}</th>`)}</tr></thead>
      <tbody role="rowgroup">
        ${this.choices.map(t=>l`<tr role="row" data-family=${t.family}>
            ${this._name(t)} ${this._margin(t)}
            <td role="cell" ><ul>${t.rejections.map(({name:n,sentence:a})=>l`<li><b>${n}.</b> ${a}</li>`)}</ul></td>
          </tr>`)}
      </tbody>
    </table>`}_name(e){return l`<th role="rowheader" scope="row"><a href="#${this.linkOf(e)}"
      aria-label="${e.name}: open its derivation">${e.name}</a>
      <div>${e.family===this.plan?l`<span class="mark plan">your plan</span>`:p}${ce(e.pack)}
        <small>${e.also_called[0]??""}</small></div></th>`}_margin(e){return l`<td role="cell" class="margin" data-head="Margin"><span
      class="chip" data-step=${sm(e)}>${tm(e)}</span>
      <small>${nm(e)}</small><small>${am(e)}</small></td>`}};customElements.define("jw-choose-table",_l);var wl=class extends w({result:m(u),answered:m(u),outdated:{type:String}},O){static styles=[y,T,b`
      #verdict { font-size: var(--type-lead); font-weight: 600; line-height: 1.35; }
      #plan { font-weight: 600; margin-top: var(--space-2); }
      .place { margin-top: var(--space-1); }
      .outdated, .doubts {
        padding: var(--space-2) var(--space-3); margin-top: var(--space-2); background: var(--alarm-wash);
        border: 1px solid var(--alarm);
        border-radius: var(--round);
      }
      h3 { margin-top: var(--space-3); }
      ul { padding-left: 1.1em; }
      .ways { display: grid; gap: var(--space-3); padding: var(--space-1) 0 0; list-style: none; }
      .ways li {
        display: flex; flex-wrap: wrap; gap: var(--space-1) var(--space-3); align-items: center;
        min-height: var(--target);
      }
      @media print {
        button { display: none; }
        .ways { gap: 0; }
        .ways li { min-height: 0; }
      }
    `];render(){let{result:e,answered:t}=this,n=e.choices.find(({family:a})=>a===t.plan)?.rejections??[];return l`<section class="panel">
      <div role="status">
        <p id="verdict">${e.verdict}</p>
        ${t.plan?l`<p id="plan">${hm(t.plan,e)}</p>`:p}
      </div>
      ${n.length>0?l`<ul class="misses">${n.map(({name:a,sentence:i})=>l`<li>${a}: ${i}</li>`)}</ul>`:p}
      <p class="quiet place">${e.place}</p>
      ${e.notes.map(a=>l`<p class="quiet note">${a}</p>`)}
      ${this.outdated?l`<p class="outdated" role="alert">${this.outdated}</p>`:p}
      ${this._doubts()} ${this._ways()}
    </section>`}_doubts(){let{port_doubts:e}=this.result;return e.length===0?p:l`<div class="doubts"><p>What speaks against that port:</p><ul>${e.map(t=>l`<li>${t}</li>`)}</ul></div>`}_ways(){let{relaxations:e}=this.result;return e.length===0?p:l`<h3>What would let a connector pass</h3>
      <ul class="ways">${e.map(t=>this._way(t))}</ul>`}_way({demand:e,sentence:t,field:n,value:a}){return l`<li data-demand=${e}>
      <span>${t}</span>
      ${n?l`<button ?disabled=${this.outdated!==""}
            @click=${()=>$(this,"jw-choose-change",{changes:{[n]:a},live:!1})}>
            Set ${this._changeWords(n,a)}
          </button>`:p}
    </li>`}_changeWords(e,t){let n=`choose.${e}`;return`${this.vocabulary.labelOf(n).toLowerCase()}: ${this.vocabulary.spoken(n,t)}`}};customElements.define("jw-choose-verdict",wl);var Wn=class extends Ze{static view="choose";static ownNames=["use","frequencies_hz","margin_asked_db","dc_current_a","dc_voltage_v","installation","port","largest_diameter_m","plan"];static styles=[y,T,Qe,b`
      @media screen and (max-width: 1179px) {
        .answer { display: contents; }
        jw-choose-verdict, .waiting { order: -1; min-height: 6rem; }
        .trouble { order: -2; }
      }
      @media print {
        .onpaper { display: block; }
        #passing, #missed { break-inside: auto; }
        h2 small { display: none; }
      }
    `];constructor(){super(),this._choose=this._enquiry("choose")}render(){let{error:e,result:t}=this._choose;return l`${this._progress(this._choose)}
      <main @jw-choose-change=${({detail:n})=>this._change(n.changes,n.live)}>
        ${this._trouble()}
        <jw-choose-form class="noprint" .state=${this._state} .refusal=${e}></jw-choose-form>
        ${t?this._answer():l`<p class="waiting quiet">${this._missing||e?.message||"Calculating…"}</p>`}
      </main>`}get ways(){let[e,t]=super.ways,n=i=>K("jointwise-choose.csv","text/csv",Vp(i));return[e,{id:"csv",words:"Save as CSV",run:()=>this._withAnswer(this._choose.result,n)},t]}_answer(){let{answered:e,result:t}=this._choose,n=t.choices.filter(({passes:i})=>!i),a=t.choices.filter(({passes:i})=>i);return l`<div class="answer">
      <jw-choose-verdict .result=${t} .answered=${e} .outdated=${this._outdated}></jw-choose-verdict>
      <p class="onpaper">${this._demands(e)}</p>
      ${a.length>0?this._panel("passing","Connectors that meet every demand",a):p}
      ${n.length>0?this._panel("missed","Connectors that miss a demand",n):p}
      <jw-cautions .cautions=${t.cautions}></jw-cautions>
    </div>`}_panel(e,t,n){let{answered:a,result:i}=this._choose,{first:r}=this.vocabulary,{bands:o,band:d,frequency_hz:c}=this.station.settings,h=Mn({...this.station,settings:pt({band:d,frequency_hz:c})},["band","frequency_hz"]),f=_=>[Kp(_,a,i,r.matrix,o),h].filter(Boolean).join("&");return l`<section class="panel" id=${e}>
      <h2>${t} (${n.length}) <small>tap a name to see how its margin is made</small></h2>
      <jw-choose-table .choices=${n} .all=${i.choices} .plan=${a.plan??""} .heading=${t}
        .linkOf=${f}></jw-choose-table>
      ${e==="passing"?l`<p class="quiet legend">${i.rule} <span class="noprint">Tap a column’s head to sort by it,
          Rank to go back.</span>
          Loss is that of the mated pair at the highest frequency${a.port?", with the joint it plugs into":""}.</p>`:p}
    </section>`}get _outdated(){let e=this._missing||this._choose.error?.message;return e?`Out of date: this is the answer before the last change. ${e}`:""}get _missing(){return wi(this._state,this.vocabulary)}_trouble(){let{error:e}=this._choose;return!e||be(e)in this.vocabulary.fields.choose?p:l`<p class="trouble" role="alert">${e.message} <button
      @click=${()=>this._ask(!0)}>Try again</button></p>`}_demands(e){return Object.entries(e).filter(([,t])=>!Array.isArray(t)||t.length>0).map(([t,n])=>`${this.vocabulary.labelOf(`choose.${t}`)}: ${this.vocabulary.spoken(`choose.${t}`,n)}`).join(" · ")}_ask(e=!1){if(this._missing)return;let t=Dp(this._state,this.vocabulary),n=JSON.stringify(t);(e||n!==this._asked)&&this._choose.askNext(t),this._asked=n}};customElements.define("jw-choose-view",Wn);var bm=({bands:s,families:e,installations:t})=>({"choose.use":{label:"The joint is for",options:{transmit:"transmitting",receive:"receiving only"}},"choose.power_w":{label:"Power, peak envelope"},"choose.bands":{label:"Bands it must carry",named:s},"choose.margin_asked_db":{label:"Margin asked for"},"choose.dc_current_a":{label:"Direct current up the coax"},"choose.dc_voltage_v":{label:"Direct voltage up the coax"},"choose.installation":{label:"Where",entries:t},"choose.port":{label:"What it plugs into",options:fe("nothing yet",je(e))},"choose.largest_diameter_m":{label:"Largest diameter that fits",factor:.001,unit:"mm"},"choose.plan":{label:"Check my plan",options:fe("no plan yet",je(e))}});var _m={id:Wn.view,label:"Choose",description:"Which connector to fit at a joint, and why the others won’t do.",fields:Fp,words:bm,element:({transport:s,stage:e})=>l`<jw-choose-view class="view" .transport=${s} .stage=${e}></jw-choose-view>`};var Xw={...kn,...Object.fromEntries(Sn.map(s=>[s,kn.part])),...Object.fromEntries(Object.entries(Ma).map(([s,e])=>[`load_${s}`,e])),point:"ImpedancePoint",transmitter:"Transmitter",receiver:"Receiver",preamplifier:"Preamplifier"},Qw=["elements","load","transmitter","receiver","explain"],Bn=s=>Object.fromEntries(Object.entries(s).filter(([e])=>!Qw.includes(e)));function ji({requests:s,parts:e},t){let{bands:n,cables:a,conditions:i,families:r,modes:o,transmitters:d,wire_lines:c}=t,{noise_environments:h,antenna_views:f}=t,_={cable:{cable:a},wires:{line:c},joint:{family:r,adapter_to:r,condition:i},transmitter:{behaviour:d},receiver:{environment:h,antenna_view:f},station:{mode:o,band:n}},g={station:Bn(s.line)};for(let[v,k]of Object.entries(Xw))g[v]=e[k];return Object.fromEntries(Object.entries(g).map(([v,k])=>[v,At(k,_[v])]))}var Zw={family:"n",cable:"rg_213",length_m:10,band:"20m",exposure:"exposed"};function wm(s,e){let{joint:t,cable:n}=ji(s,e),a={...Bn(s.requests.fitout),of:{type:"choice",choices:["line","joint"],default:"line",nullable:!1},shown:{type:"number",min:1,max:120,default:1,nullable:!1},family:t.family,adapter_to:t.adapter_to,name:t.name,cable:{...n.cable,nullable:!0},length_m:n.length_m};for(let[i,r]of Object.entries(Zw))a[i]={...a[i],default:r};return{fitout:a}}var e5=/^\d{4}-\d{2}-\d{2}$/;function yl(s){if(typeof s!="string"||!e5.test(s))return!1;let e=Date.parse(s);return!Number.isNaN(e)&&ym(e)===s}var Ae=()=>new Date().toLocaleDateString("sv-SE"),ym=s=>new Date(s).toISOString().slice(0,10);function vm(s,e){let[t,n,a]=s.split("-").map(Number),i=n-1+e,r=d=>Date.UTC(t+Math.floor(i/12),i%12,d),o=r(a);return ym(new Date(o).getUTCDate()===a?o:r(28))}var $m=(s,e)=>Math.round((Date.parse(e)-Date.parse(s))/864e5);var Sm="0123456789ABCDEFGHJKMNPQRSTVWXYZ",xm=5,Ei=8,km=4,t5=["transmitter","antenna"],ds=new RegExp(`^[${Sm}]{${Ei}}$`),Le=s=>`${s.slice(0,km)}-${s.slice(km)}`,Oi=s=>s.toUpperCase().replace(/[^0-9A-Z]/g,"").replaceAll("O","0").replace(/[IL]/g,"1");function s5(s){let e=Cs(ei(JSON.stringify(s))),t=0n;for(let a of e.slice(0,Ei*xm/8))t=t<<8n|BigInt(a);return Array.from({length:Ei},(a,i)=>Sm[Number(t>>BigInt((Ei-1-i)*xm)&31n)]).join("")}function ze({name:s,request:{elements:e}}){let t=new Map;return e.flatMap(({kind:n,name:a="",family:i,adapter_to:r=null},o)=>{if(n!=="joint")return[];let d=a?{name:a}:{family:i,adapter:r},c=JSON.stringify(d),h=(t.get(c)??0)+1;return t.set(c,h),(r===null?["whole"]:t5).map(_=>({code:s5([s,d,h,_]),element:o,end:_,name:a}))})}var gt={joints:[]},Ti=["good","watch","faulty"],Hn="none",jm="a day as 2026-11-29, or nothing",Ai={fitted_by:{longest:60},fitted_on:{is:yl,allowed:jm},torque:{longest:40},sealed:{longest:120},inspected_on:{is:yl,allowed:jm},state:{is:s=>Ti.includes(s),allowed:`one of ${Ti.join(", ")}, or nothing`},note:{longest:500},belongs_to:{is:s=>s===Hn||ds.test(s),allowed:`a joint's code, "${Hn}", or nothing`}},Tm=Object.keys(Ai);function $l(s){let e=Ai[s];return"longest"in e?e.longest:void 0}var n5=5e3,a5=5e3,Em=1200,i5={line:60,name:60,joins:300},r5=/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}\.\d{3}Z$/,Un=s=>`${s.at} ${s.field} ${s.value}`,Om=({entries:s})=>s.at(-1)?.at??"";function o5(s,e){let t=Om(e)>Om(s)?e:s,n=new Map([...s.entries,...e.entries].map(i=>[Un(i),i])),a=[...n.keys()].sort().map(i=>n.get(i));return{...t,entries:a}}function xl({mine:s,theirs:e}){let t=new Map(s.joints.map(n=>[n.code,n]));for(let n of e.joints){let a=t.get(n.code);t.set(n.code,a?o5(a,n):n)}return{joints:[...t.values()]}}function Am(s,e,{field:t,value:n},a){let i=s.joints.find(({code:h})=>h===e.code),r=i?.entries??[],o=r.at(-1),d=new Date(o?Math.max(a,Date.parse(o.at)+1):a).toISOString(),c={...e,entries:[...r,{at:d,field:t,value:n}]};return{joints:i?s.joints.map(h=>h===i?c:h):[...s.joints,c]}}var Ue=s=>Object.fromEntries(Tm.map(e=>[e,s.findLast(({field:t})=>t===e)?.value??""])),vl=({code:s,entries:e})=>Ue(e).belongs_to||s;function bt(s,e){return s.joints.filter(a=>vl(a)===e).flatMap(({entries:a})=>a).filter(({field:a})=>a!=="belongs_to").sort((a,i)=>Un(a)<Un(i)?-1:1)}var Mm=({joints:s},e)=>s.filter(t=>vl(t)!==Hn&&!e.has(vl(t)));function l5(s,e){let{at:t,field:n,value:a}=U(s,e);ie(s,e,{},["at","field","value"]),(typeof t!="string"||!r5.test(t)||Number.isNaN(Date.parse(t)))&&P(`${s}.at`,t,"a moment as 2026-11-29T12:00:00.000Z"),(typeof n!="string"||!Object.hasOwn(Ai,n))&&P(`${s}.field`,n,`one of ${Tm.join(", ")}`);let i=Ai[n];return"longest"in i?Q(`${s}.value`,a,i.longest):a!==""&&(typeof a!="string"||!i.is(a))&&P(`${s}.value`,a,i.allowed),{at:t,field:n,value:a}}function qm(s){let e=X("joints",U("joint book",s).joints,0,n5,"joints").map((t,n)=>{let a=`joints[${n}]`,{code:i,months:r,entries:o,...d}=U(a,t);(typeof i!="string"||!ds.test(i))&&P(`${a}.code`,i,"eight digits and capital letters"),(!Number.isInteger(r)||r<1||r>Em)&&P(`${a}.months`,r,`a whole number from 1 to ${Em}`);for(let[g,v]of Object.entries(i5))Q(`${a}.${g}`,d[g],v);let c=X(`${a}.entries`,o,0,a5,"entries").map((g,v)=>l5(`${a}.entries[${v}]`,g)),{line:h,name:f,joins:_}=d;return{code:i,line:h,name:f,joins:_,months:r,entries:c.sort((g,v)=>Un(g)<Un(v)?-1:1)}});return xl({mine:gt,theirs:{joints:e}})}var d5={key:"jointwise-joints",blocked:"This browser keeps nothing for the page: what you enter in the joint book ends when it is closed. Save a station file to keep it.",full:"This browser has no room for the joint book: the last entry is not kept. Save a station file and remove what you no longer need.",spoilt:"The joint book kept in this browser could not be read and was set aside. Save it as a file to look for what is left."},Ws=new oe(d5,qm,xl);var c5=30;function _t({inspected_on:s,fitted_on:e},t){let n=s>e?s:e;return n&&vm(n,t)}function Mi({state:s},e,t){if(s==="faulty")return"faulty";if(e==="")return"";let n=$m(t,e);return n<0?"overdue":n<=c5?"soon":"later"}function Cm(s,e,t,n){let a=new Map(s.joints.map(o=>[o.code,o])),i=e.flatMap(o=>ze(o).flatMap(({code:d,name:c})=>{let h=bt(s,d);if(h.length===0)return[];let f=t.get(d)??a.get(d),_=Ue(h),g=f?_t(_,f.months):"";return[{code:d,line:o.name,name:f?.name??c,due:g,standing:Mi(_,g,n)}]})),r="9999";return i.sort((o,d)=>(o.due||r)<(d.due||r)?-1:1)}var u5={key:"jointwise-lines",blocked:"This browser keeps nothing for the page: your lines end when it is closed. Export them to keep them.",full:"This browser has no room for all of your lines: the latest changes are not kept. Export them to keep them.",spoilt:"The lines kept in this browser could not be read and were set aside. Save them as a file to look for what is left."};function h5({base:s,mine:e,theirs:t}){let n=e.lines[e.current],a=new Set(e.lines.map(({request:o})=>JSON.stringify(o))),i=Ee({base:s.lines,mine:e.lines,theirs:t.lines},({name:o})=>o,(o,d)=>a.has(JSON.stringify(o.request))?void 0:{...o,name:ip(o.name,d,On)}),r=i.findIndex(({name:o})=>o===n.name);return{lines:i,current:r===-1?Math.min(e.current,i.length-1):r}}var Fe=new oe(u5,({lines:s,current:e},t)=>{let n=Ba(s,t);return{lines:n,current:Number.isInteger(e)&&n[e]?e:0}},h5);var p5=["transmitter","load"],Rm=["band","frequency_hz"];function wt(s,e,{fields:t,first:n}){let{settings:a}=e,i=Rm.some(h=>h in s),r=Object.keys(t.station).filter(h=>!(i&&Rm.includes(h))),o=Object.fromEntries(r.filter(h=>h in a).map(h=>[h,a[h]])),d=i?null:Tn(a,"band",n.settings.band),c=Da(e);return{...o,...d&&{band:d},...c&&{transmitter:c},load:Nh(e,n.settings.vswr),...s}}function Nm(s,e,t){let{fields:n}=t,a=d=>p5.includes(d)||Object.hasOwn(n.station,d),i=Object.keys(s).filter(a),r=wt(m5(s,i),e,t),o=d=>r[d]??n.station[d]?.default;return i.filter(d=>JSON.stringify(s[d])!==JSON.stringify(o(d)))}var m5=(s,e)=>Object.fromEntries(Object.entries(s).filter(([t])=>!e.includes(t)));var qi=({format:s,version:e,key:t},n)=>({format:s,version:e,[t]:n});function Ci({format:s,version:e,key:t},n,a){let i;try{i=JSON.parse(n)}catch{throw new RangeError(`The file is no JSON; allowed: a file of ${t} exported here.`)}return i?.format!==s&&P("format",i?.format,`"${s}"`),i.version!==e&&P("version",i.version,`${e}`),a(i[t])}var zm=200,Pm={format:"jointwise sweeps",version:1,key:"sweeps"},Im={line:60,name:200,verdict:2e3,text:8e6},g5=/^\d{4}-\d{2}-\d{2}$/;function Wm({date:s,line:e,file:t,result:n}){let a=(n.line?.joints??[]).map(({element:i,name:r,excess:o})=>({element:i,name:r,excess:o}));return{date:s,line:e,ports:n.ports,name:t.name,text:t.text,verdict:n.verdict,joints:a,resistance_ohm:n.part?.resistance_ohm??null}}var Ri=({line:s,date:e,name:t})=>JSON.stringify([s,e,t]),kl=s=>[...s].sort((e,t)=>e.date.localeCompare(t.date)).slice(-zm);function Sl(s,e){return kl([...s.filter(t=>Ri(t)!==Ri(e)),e])}function Bm(s,e){let t=s.filter(o=>o.line===e),n=t.filter(({ports:o})=>o===2);if(n.length>1)return{title:"resistance, Ω",series:[{name:"in series",dates:n.map(({date:o})=>o),values:n.map(({resistance_ohm:o})=>o)}]};let a=t.filter(({ports:o})=>o===1);return a.length<2?void 0:{title:"excess reflection",series:[...new Map(a.flatMap(o=>o.joints.map(({element:d,name:c})=>[d,c])))].map(([o,d])=>({name:`${o+1} · ${d}`,dates:a.map(({date:c})=>c),values:a.map(c=>c.joints.find(h=>h.element===o)?.excess??null)}))}}var Hm=(s,e)=>{e!==null&&!Number.isFinite(e)&&P(s,e,"a number or null")};function b5(s,e){let{element:t,name:n,excess:a}=U(s,e);return(!Number.isInteger(t)||t<0||t>59)&&P(`${s}.element`,t,"a whole number from 0 to 59"),Q(`${s}.name`,n,Im.line),Hm(`${s}.excess`,a),{element:t,name:n,excess:a}}function jl(s){return X("sweeps",s,0,zm,"sweeps").map((e,t)=>{let n=`sweeps[${t}]`,{date:a,ports:i,joints:r,resistance_ohm:o,...d}=U(n,e);(typeof a!="string"||!g5.test(a)||Number.isNaN(Date.parse(a)))&&P(`${n}.date`,a,"a day as 2026-11-25"),i!==1&&i!==2&&P(`${n}.ports`,i,"1 or 2");for(let[h,f]of Object.entries(Im))Q(`${n}.${h}`,d[h],f);Hm(`${n}.resistance_ohm`,o);let c=X(`${n}.joints`,r,0,60,"joints").map((h,f)=>b5(`${n}.joints[${f}]`,h));return{date:a,line:d.line,ports:i,name:d.name,text:d.text,verdict:d.verdict,joints:c,resistance_ohm:o}})}var Um=s=>qi(Pm,s),Fm=s=>Ci(Pm,s,jl);var _5={key:"jointwise-sweeps",blocked:"This browser keeps nothing for the page: your sweeps end when it is closed. Export them to keep them.",full:"This browser has no room for more sweeps: the last one is not kept. Export the list and remove old ones.",spoilt:"The sweeps kept in this browser could not be read and were set aside. Save them as a file to look for what is left."},Nt=new oe(_5,jl,s=>kl(Ee(s,Ri)));var Ni=(s,e,{element:t,name:n})=>s.filter(a=>a.line===e).flatMap(({date:a,joints:i,verdict:r})=>{let o=i.find(d=>n?d.name===n:d.element===t);return o?[{date:a,excess:o.excess,verdict:r}]:[]});var w5=new Set(["common_practice","memory",""]),Li=s=>!w5.has(s);function Me(s){if(!s)return"";let e=[s.body,s.year,s.place].filter(Boolean).join(", ");return e?`${s.title} (${e})`:s.title}var y5=s=>s==="source"||s==="sources"||s.endsWith("_source");function*Dm(s){for(let[e,t]of Object.entries(s??{}))y5(e)?yield*[t].flat():typeof t=="object"&&(yield*Dm(t))}function zi(...s){let e=new Set(s.flatMap(t=>[...Dm(t)]).filter(Li));return new Map([...e].map((t,n)=>[t,n+1]))}var v5="common practice";function Gm(s,e,t){let n=[...new Set(e)].map(i=>t.get(i)).filter(Boolean);return[[...new Set(s)].filter(i=>i!==v5).join(", "),n.length>0?`[${n.join(", ")}]`:""].filter(Boolean).join(" ")}var Km=s=>new Map(s?.sources.map(e=>[e.id,Me(e)]));function Vm(s,{fragment:e},t){let n=Number(new URLSearchParams(e).get("power_w")),a=_e(t,n);return`${s}#${e}${a===t?"":`&powers_w=${a.join(",")}`}`}var Pi=s=>`view=fitout&joint=${s}`,Ym=(s,e)=>Et(s)?`${s}#${Pi(e)}`:`Joint ${Le(e)}`;var Jm={faulty:()=>"is faulty",overdue:s=>`inspection overdue since ${s}`,soon:s=>`inspection due by ${s}`},El=class extends w({standings:m(u),strays:m(u),joints:m(u),_refused:x(u)}){static styles=[y,T,ne,b`
      ul { padding-left: 1.25em; margin-bottom: var(--space-2); font-size: var(--type-text); }
      .not { color: var(--alarm); font-weight: 700; }
      .row { display: flex; flex-wrap: wrap; gap: var(--space-2); align-items: end; margin-bottom: var(--space-2); }
      label { display: grid; gap: var(--space-1); font-size: var(--type-small); font-weight: 600; }
      label > * { font-weight: 400; max-width: 16rem; }
      li a { display: inline-grid; min-height: var(--target); align-items: center; }
    `];constructor(){super(),this._refused=""}render(){let e=this.standings.filter(({standing:t})=>t in Jm);return l`<section class="panel" aria-labelledby="heading">
      <h2 id="heading">Joint book <small>${this._words(e)}</small></h2>
      ${e.length>0?l`<ul id="due">${e.map(({code:t,line:n,name:a,due:i,standing:r})=>l`<li><a href="#${Pi(t)}">${n}, ${a}</a>: <span
                  class=${r==="soon"?"":"not"}>${Jm[r](i)}</span></li>`)}</ul>`:p}
      ${this._strayRecords()}
      <details><summary>Open a joint by the code on its label</summary>
        <div class="row">
          <label>Code<input id="code" autocomplete="off" placeholder="K7Q4-2MXA" @change=${this._typed}
            aria-invalid=${this._refused?"true":"false"} aria-describedby="refused"></label>
          <p id="refused" class="error" role="alert">${this._refused}</p>
        </div>
      </details>
    </section>`}_words(e){if(this.standings.length===0)return"nothing entered yet; unfold it at a joint. It stays on this device";if(e.length>0)return e.length===1?"one joint needs attention":`${e.length} joints need attention`;let t=this.standings.find(n=>n.due);return t?`nothing is due; next is ${t.line}, ${t.name} on ${t.due}`:"nothing is due"}_strayRecords(){return this.strays.length===0?p:l`<details id="strays"><summary>Records of joints that are in no line
        <small>${this.strays.length}</small></summary>
      <p class="quiet">The line or the joint was renamed or is gone. Say which joint of this line a record is of.</p>
      ${this.strays.map(e=>l`<div class="row"><label>${e.line}, ${e.name}: ${e.joins}<select
            aria-label="Joint of the record ${Le(e.code)}"
            @change=${t=>this._given(t,e)}>
            <option value="">not said</option>
            ${this.joints.map(({code:t,words:n})=>l`<option value=${t}>${n}</option>`)}
            <option value=${Hn}>set it aside</option>
          </select></label></div>`)}
    </details>`}_given({target:e},t){e.value&&$(this,"jw-joint-given",{record:t,to:e.value})}_typed({target:e}){let t=Oi(e.value),n=ds.test(t);this._refused=n||t===""?"":`Code is “${e.value}”; allowed: eight digits and letters, as K7Q4-2MXA.`,n&&(location.hash=Pi(t))}};customElements.define("jw-fitout-due",El);var Ol=class extends Z{static styles=[...Z.styles,b`div { display: flex; gap: var(--space-2); } button { flex: none; }`];render(){return l`<label for=${this.name}>${this.label}</label>
      <div>
        <input id=${this.name} type="date" .value=${this.value} aria-invalid=${this.invalid} aria-describedby="under"
          @change=${e=>this.change(e.target.value)}>
        <button @click=${()=>this.change(Ae())}>Today</button>
      </div>
      ${this.under("left out, none is printed")}`}};customElements.define("jw-fitout-date",Ol);var $5=["load","receiver","transmitter","explain"];function x5({family:s,adapter_to:e,name:t,cable:n,length_m:a}){let i=mt({kind:"joint",family:s,adapter_to:e,name:t});return n===null?[i]:[{kind:"cable",cable:n,length_m:a},i]}function Ii(s,e){return{...Object.fromEntries(Object.entries(e).filter(([n])=>!$5.includes(n))),...mt({station:s.station,date:s.date})}}function Xm(s,e){return{elements:x5(s),...mt(Object.fromEntries(e.map(t=>[t,s[t]])))}}var Fn=s=>s?.field?.replace(/^elements\[\d+\]\./,"").split(/[[.]/)[0]??"";var k5=["family","adapter_to","cable","length_m","name","exposure","added_sealing"],S5=["power_w","mode","band","frequency_hz","vibration","matings_per_year","service_life_years","ambient_temperature_c"],j5=142e5,Tl=class extends w({state:m(u),line:m(u),linked:{type:Boolean},refusal:m(u)},O){static styles=[y,ne,b`:host {
      padding: var(--space-3); background: var(--card); border: 1px solid var(--line); border-radius: var(--round);
    }
    .double { grid-column: span 2; }
    p { margin: var(--space-1) 0 var(--space-2); font-size: var(--type-text); }
    p a { display: inline-grid; min-height: var(--target); align-items: center; }`];render(){return l`<div @jw-change=${this._changed}>
      <h2 class="unseen">What is fitted</h2>
      <div class="fields">${["of","station","date"].map(e=>this._field(e))}</div>
      ${this.state.of==="line"?this._line():this._joint()}
    </div>`}_line(){let{name:e,request:t}=this.line,{length:n}=t.elements,a=n===1?"one element":`${n} elements`;return l`<p><b>${e}</b>, ${a}${this.linked?", as it came with the link":""}.
      <a href="#view=line">Change it in the Line view</a>
      ${this.linked?l`<button @click=${()=>$(this,"jw-fitout-own")}>Use my own line</button>`:p}</p>`}_joint(){return l`<div class="fields">${[...k5,...S5].map(e=>this._field(e))}</div>`}_field(e){if(e==="length_m"&&this.state.cable===null)return p;if(e==="frequency_hz"&&this.state.band!==null)return p;let t=`fitout.${e}`,{refusal:n,state:a}=this,r=n&&Fn(n)===e?n.message:"";return e==="date"?l`<jw-fitout-date class="double" name=${t} .value=${a.date} .error=${r}></jw-fitout-date>`:I(this.vocabulary,t,a[e],r)}_changed(e){if(e.stopPropagation(),e.detail.live)return;let t=D(e);"band"in t&&(t.frequency_hz=t.band===null?this.state.frequency_hz??j5:null),$(this,"jw-fitout-change",{changes:t})}};customElements.define("jw-fitout-form",Tl);/*!
 * Copyright (c) 2023 Paul Miller (paulmillr.com)
 * SPDX-License-Identifier: MIT OR Apache-2.0
 */var E5=(()=>{let s=[];for(let e=1;e<=40;e++){let t=(16*e+128)*e+64;if(e>=2){let n=Math.floor(e/7)+2;t-=(25*n-10)*n-55,e>=7&&(t-=36)}s.push(t>>>3)}return s})(),O5=["low","medium","quartile","high"],T5={low:[7,10,15,20,26,18,20,24,30,18,20,24,26,30,22,24,28,30,28,28,28,28,30,30,26,28,30,30,30,30,30,30,30,30,30,30,30,30,30,30],medium:[10,16,26,18,24,16,18,22,22,26,30,22,22,24,24,28,28,26,26,26,26,28,28,28,28,28,28,28,28,28,28,28,28,28,28,28,28,28,28,28],quartile:[13,22,18,26,18,24,18,22,20,24,28,26,24,20,30,24,28,28,26,30,28,30,30,30,30,28,30,30,30,30,30,30,30,30,30,30,30,30,30,30],high:[17,28,22,16,22,28,26,26,24,28,24,28,22,24,24,30,28,28,26,28,30,24,30,30,30,30,30,30,30,30,30,30,30,30,30,30,30,30,30,30]},A5={low:[1,1,1,1,1,2,2,2,2,4,4,4,4,4,6,6,6,6,7,8,8,9,9,10,12,12,12,13,14,15,16,17,18,19,19,20,21,22,24,25],medium:[1,1,1,2,2,4,4,4,5,5,5,8,9,9,10,10,11,13,14,16,17,17,18,20,21,23,25,26,28,29,31,33,35,37,38,40,43,45,47,49],quartile:[1,1,2,2,4,4,6,6,8,8,8,10,12,16,12,17,16,18,21,20,23,23,25,27,29,34,34,35,38,40,43,45,48,51,53,56,59,62,65,68],high:[1,1,2,4,4,4,5,6,8,8,11,11,16,16,18,16,19,21,25,25,25,34,30,32,35,37,40,42,45,48,51,54,57,60,63,66,70,74,77,81]},M5={low:1,medium:0,quartile:3,high:2},Hi="0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";function q5(s){if(s=af(s),s===1)return[];let e=21+4*(s-1)-7,t=Math.ceil((e-6)/28),n=Math.floor((e-6)/t);n%2?n+=1:(e-6)%t*2>=t&&(n+=2);let a=[6];for(let i=1;i<t;i++)a.push(e-(t-i)*n);return a.push(e),a}function C5(s,e){let t=M5[s]<<3|e,n=t;for(let a=0;a<10;a++)n=n<<1^(n>>9)*1335;return(t<<10|n)^21522}function R5(s){let e=s;for(let t=0;t<12;t++)e=e<<1^(e>>11)*7973;return s<<12|e}var N5={numeric:1,alphanumeric:2,byte:4},Dn={numeric:[10,12,14],alphanumeric:[9,11,13],byte:[8,16,16]},Ml=(()=>{let s=new Uint8Array(510),e=new Uint8Array(256);for(let t=0,n=1;t<255;t++)s[t]=s[t+255]=n,e[n]=t,n<<=1,n&256&&(n^=285);return{exp:s,log:e}})();function L5(s){let{exp:e,log:t}=Ml,n=new Uint8Array(s);n[s-1]=1;for(let a=0,i=1;a<s;a++){for(let r=0;r<s;r++){let o=n[r];n[r]=(o?e[t[o]+t[i]]:0)^(r+1<s?n[r+1]:0)}i=e[t[i]+1]}return n}var Qm=[];function z5(s){let e=Qm[s];if(e!==void 0)return e;let t=L5(s),{exp:n,log:a}=Ml,i=new Uint8Array(256*s);for(let r=1;r<256;r++){let o=a[r],d=r*s;for(let c=0;c<s;c++){let h=t[c];h&&(i[d+c]=n[a[h]+o])}}return Qm[s]={gen:t,mul:i}}function P5(s,e,t){let{exp:n,log:a}=Ml,i=e.length,r=new Uint8Array(i);if(t!==void 0){let o=i-1;for(let d=0;d<s.length;d++){let c=(s[d]^r[0])*i;for(let h=0;h<o;h++)r[h]=r[h+1]^t[c+h];r[o]=t[c+o]}return r}for(let o=0;o<s.length;o++){let d=s[o]^r[0];if(r.copyWithin(0,1),r[i-1]=0,d)for(let c=0;c<i;c++)e[c]&&(r[c]^=n[a[e[c]]+a[d]])}return r}function Ui(s,e){let t=E5[s-1],n=T5[e][s-1],a=A5[e][s-1],i=Math.floor(t/a)-n,r=a-t%a;return{words:n,numBlocks:a,shortBlocks:r,blockLen:i,capacity:(t-n*a)*8}}var tt=s=>{throw new Error(s)};function af(s){if(typeof s!="number")throw new TypeError(`"ver" expected number, got type=${typeof s}`);if(!Number.isSafeInteger(s))throw new RangeError(`"ver" expected safe integer, got ${s}`);if(s<1||s>40)throw new RangeError(`Invalid version=${s}. Expected number [1..40]`);return s}function I5(s){let e="numeric";for(let t=0;t<s.length;t++){let n=Bi[s.charCodeAt(t)];if(!(n>=0))return"byte";n>9&&(e="alphanumeric")}return e}var Bi=(()=>{let s=new Int8Array(128).fill(-1);for(let e=0;e<Hi.length;e++)s[Hi.charCodeAt(e)]=e;return s})();function W5(s,e,t,n,a){let i=Ui(s,e),r=Dn[n][Math.floor((s+7)/17)],o=n==="byte"?a.length:t.length;o>=1<<r&&tt("Capacity overflow");let d=new Uint8Array(i.capacity>>>3),c=0,h=0,f=0,_=(L,de)=>{for(c=c<<de|L,h+=de;h>=8;)d[f++]=c>>>(h-=8)&255};if(_(N5[n],4),_(o,r),n==="numeric")for(let L=0;L<o;L+=3){let de=Math.min(3,o-L);_(Number(t.slice(L,L+de)),[0,4,7,10][de])}else if(n==="alphanumeric"){for(let L=0;L+1<o;L+=2)_(Bi[t.charCodeAt(L)]*45+Bi[t.charCodeAt(L+1)],11);o&1&&_(Bi[t.charCodeAt(o-1)],6)}else for(let L=0;L<a.length;L++)_(a[L],8);let g=f*8+h;g>i.capacity&&tt("Capacity overflow"),h&&(d[f]=c<<8-h&255),g+=Math.min(4,i.capacity-g),g&7&&(g+=8-(g&7));for(let L=g>>>3,de=0;L<d.length;L++,de^=1)d[L]=de?17:236;let{words:v,numBlocks:k,shortBlocks:S,blockLen:E}=i,q=z5(v),te=[],ye=[];for(let L=0,de=0;L<k;L++){let Mu=E+(L<S?0:1);te.push(d.subarray(de,de+Mu)),ye.push(P5(te[L],q.gen,q.mul)),de+=Mu}let Ye=new Uint8Array(d.length+v*k),he=0;for(let L=0;L<=E;L++)for(let de of te)L<de.length&&(Ye[he++]=de[L]);for(let L=0;L<v;L++)for(let de of ye)Ye[he++]=de[L];return Ye}function B5(s,e){let t=s%2,n=e%2,a=s%3,i=a*(e%3)%3,r=t&n,o=0;return t===n&&(o|=1),n===0&&(o|=2),a===0&&(o|=4),(s+e)%3===0&&(o|=8),(Math.floor(e/2)+Math.floor(s/3))%2===0&&(o|=16),r+i===0&&(o|=32),(r+i)%2===0&&(o|=64),((t^n)+i)%2===0&&(o|=128),o}var Zm=(()=>{let s=new Uint8Array(65536);for(let e=1;e<s.length;e++)s[e]=s[e>>>1]+(e&1);return s})(),Bs=s=>Zm[s&65535]+Zm[s>>>16],H5=new Uint32Array(32);function U5(s){let e=[1431655765,858993459,252645135,16711935,65535];for(let t=0;t<5;t++){let n=e[t]>>>0,a=1<<t;for(let i=0;i<32;i+=a<<1)for(let r=0;r<a;r++){let o=s[i+r]>>>0,d=s[i+r+a]>>>0,c=(o>>>a^d)&n;s[i+r]=(o^c<<a)>>>0,s[i+r+a]=(d^c)>>>0}}}var cs=s=>{let e=s+31>>>5;return{size:s,words:e,v:new Uint32Array(e*s)}},rf=(s,e,t)=>s.v[t*s.words+(e>>>5)]>>>(e&31)&1,et=(s,e,t,n)=>{let a=t*s.words+(e>>>5),i=1<<(e&31);s.v[a]=n?s.v[a]|i:s.v[a]&~i};function of(s,e){let{size:t,words:n,v:a}=s,i=H5;for(let r=0;r<t;r+=32)for(let o=0;o<n;o++){let d=Math.min(32,t-r);for(let c=0;c<d;c++)i[c]=a[(r+c)*n+o];i.fill(0,d),U5(i);for(let c=0,h=o*32;c<32&&h<t;c++,h++)e.v[h*e.words+(r>>>5)]=i[c]}}function ef(s){let{size:e,words:t,v:n}=s,a=e&31?(1<<(e&31))-1>>>0:4294967295,i=0;for(let r=0;r<t;r++){let o=r===t-1?a:4294967295,d=n[3*t+r],c=4294967295,h=n[r]^n[t+r],f=n[t+r]^n[2*t+r],_=n[2*t+r]^d;for(let g=0,v=4*t+r;g<=e-5;g++,v+=t){let k=n[v],S=d^k,E=~(h|f|_|S)&o;E&&(i+=Bs(E>>>0)+2*Bs((E&c)>>>0)),c=h,h=f,f=_,_=S,d=k}}return i}function tf(s){let{size:e,words:t,v:n}=s,a=e&31?(1<<(e&31))-1>>>0:4294967295,i=0;for(let r=0;r<t;r++){let o=r===t-1?a:4294967295;for(let d=0;d<=e-11;d++){let c=d*t+r,h=n[c],f=n[c+=t],_=n[c+=t],g=n[c+=t],v=n[c+=t],k=n[c+=t],S=n[c+=t],E=n[c+=t],q=n[c+=t],te=n[c+=t],ye=n[c+t],Ye=o&h&~f&_&g&v&~k&S&~(E|q|te|ye),he=o&~(h|f|_|g)&v&~k&S&E&q&~te&ye;i+=Bs(Ye>>>0)+Bs(he>>>0)}}return i}function F5(s,e,t=1/0){let{size:n,words:a,v:i}=s,r=ef(s)+ef(e);if(r>=t)return r;let o=(1<<n-32*(a-1)-1)-1>>>0,d=0,c=0;for(let g=0;g<n;g++)for(let v=0;v<a;v++){let k=i[g*a+v];if(c+=Bs(k>>>0),g===n-1)continue;let S=i[(g+1)*a+v],E=v+1<a?i[g*a+v+1]:0,q=v+1<a?i[(g+1)*a+v+1]:0,te=~(k^S),ye=~(k^(k>>>1|E<<31)),Ye=~(S^(S>>>1|q<<31)),he=te&ye&Ye;v===a-1&&(he&=o),d+=Bs(he>>>0)}let h=n*n,f=Math.ceil(Math.max(0,Math.abs(c*100-h*50)-h*5)/(h*5)),_=r+3*d+10*f;return _>=t?_:_+40*(tf(s)+tf(e))}function D5(s,e,t,n){let a=s.size,i=C5(t,n);for(let r=0;r<15;r++){let o=i>>r&1;r<6?et(s,8,r,o):r<8?et(s,8,r+1,o):r===8?et(s,7,8,o):et(s,14-r,8,o),r<8?et(s,a-1-r,8,o):et(s,8,a-15+r,o)}if(et(s,8,a-8,1),e>=7){let r=R5(e);for(let o=0;o<18;o++){let d=r>>o&1,c=a-11+o%3,h=o/3|0;et(s,c,h,d),et(s,h,c,d)}}}var Wi;function G5(s){let e=21+4*(s-1),t=cs(e),n=new Uint8Array(e*e),a=(h,f,_)=>{et(t,h,f,_),n[f*e+h]=1};for(let[h,f]of[[0,0],[e-7,0],[0,e-7]])for(let _=-1;_<8;_++)for(let g=-1;g<8;g++){let v=h+g,k=f+_;if(v<0||k<0||v>=e||k>=e)continue;let S=g>=0&&g<7&&_>=0&&_<7&&(g===0||g===6||_===0||_===6||g>1&&g<5&&_>1&&_<5);a(v,k,S?1:0)}let i=q5(s);for(let h of i)for(let f of i)if(!n[h*e+f])for(let _=-2;_<=2;_++)for(let g=-2;g<=2;g++){let v=Math.max(Math.abs(g),Math.abs(_))!==1;a(f+g,h+_,v?1:0)}for(let h=0;h<e;h++)n[6*e+h]||a(h,6,h%2===0?1:0),n[h*e+6]||a(6,h,h%2===0?1:0);for(let h=0;h<9;h++)h!==6&&(a(8,h,0),a(h,8,0)),h<8&&(a(e-1-h,8,0),a(8,e-1-h,0));if(s>=7)for(let h=0;h<18;h++){let f=e-11+h%3,_=h/3|0;a(f,_,0),a(_,f,0)}let r=[];for(let h=0;h<8;h++)r.push(cs(e));let o=new Uint16Array(e*e),d=0;for(let h=e-1,f=-1,_=e-1;h>0;h-=2,f=-f)for(h===6&&(h=5);;_+=f){for(let g=0;g<2;g++){let v=h-g;if(n[_*e+v])continue;let k=_*t.words+(v>>>5);o[d++]=k<<5|v&31;for(let S=0,E=B5(v,_);E;S++,E>>=1)E&1&&(r[S].v[k]|=1<<(v&31))}if(_+f<0||_+f>=e)break}let c=r.map(h=>{let f=cs(e);return of(h,f),f.v});return{ver:s,tpl:t.v,pos:o.slice(0,d),planes:r.map(h=>h.v),planesT:c,work:[cs(e),cs(e),cs(e),cs(e)]}}function K5(s,e,t,n,a=!1){(Wi===void 0||Wi.ver!==s)&&(Wi=G5(s));let{tpl:i,pos:r,planes:o,planesT:d,work:c}=Wi,[h,f,_,g]=c;h.v.set(i);let v=Math.min(8*t.length,r.length);for(let E=0;E<v;E++)if(t[E>>>3]&128>>>(E&7)){let q=r[E];h.v[q>>>5]|=1<<(q&31)}let k=n;if(k===void 0){of(h,f);let E=1/0;for(let q=0;q<8;q++){let te=o[q],ye=d[q];for(let he=0;he<_.v.length;he++)_.v[he]=h.v[he]^te[he],g.v[he]=f.v[he]^ye[he];let Ye=F5(_,g,E);Ye<E&&(E=Ye,k=q)}}let S=o[k];for(let E=0;E<h.v.length;E++)h.v[E]^=S[E];return a||D5(h,s,e,k),h}var Al=(s,e)=>{if(typeof s!="number")throw new TypeError(`"${e}" expected number, got type=${typeof s}`);if(!Number.isSafeInteger(s))throw new RangeError(`"${e}" expected safe integer, got ${s}`);return s},sf=(s,e)=>{if(typeof s!="string")throw new TypeError(`"${e}" expected string, got type=${typeof s}`);return s};function V5(s){let e=0;for(let t=0;t<s.length;t++){let n=s.charCodeAt(t);if(n<128)e++;else if(n<2048)e+=2;else if(n<55296||n>57343)e+=3;else if(n<=56319&&t+1<s.length){let a=s.charCodeAt(t+1);a>=56320&&a<=57343?(e+=4,t++):e+=3}else e+=3}return e}function Y5(s,e){let t=Dn.byte[Math.floor((s+7)/17)];return Math.min((1<<t)-1,Math.floor((Ui(s,e).capacity-4-t)/8))}function J5(s){return s instanceof Uint8Array||ArrayBuffer.isView(s)&&s.constructor.name==="Uint8Array"&&"BYTES_PER_ELEMENT"in s&&s.BYTES_PER_ELEMENT===1}var Gn=(s,e,t)=>s.map[e]>=0&&s.map[t]>=0&&rf(s.m,s.map[e],s.map[t])===1,lf=[10,27],df=String.fromCharCode(lf[0]);function X5(s){let e=s.W,t=new Array(e);for(let n=0;n<e;n++){let a=new Array(e);for(let i=0;i<e;i++)a[i]=Gn(s,i,n);t[n]=a}return t}function Q5(s){let e=s.W,t="";for(let n=0;n<e;n+=2){for(let a=0;a<e;a++){let i=Gn(s,a,n),r=n+1>=e?!0:Gn(s,a,n+1);t+=!i&&!r?"█":!i&&r?"▀":i&&!r?"▄":" "}t+=df}return t}function Z5(s){let e=s.W,t=String.fromCharCode(lf[1]),n=t+"[0m",a="";for(let i=0;i<e;i++){for(let r=0;r<e;r++)a+=Gn(s,r,i)?`${t}[40m  ${n}`:`${t}[1;47m  ${n}`;a+=df}return a}function ey(s,e){let t=s.W,n=`<svg viewBox="0 0 ${t} ${t}" xmlns="http://www.w3.org/2000/svg">`,a="",i;for(let r=0;r<t;r++)for(let o=0;o<t;o++){if(!Gn(s,o,r))continue;if(!e){n+=`<rect x="${o}" y="${r}" width="1" height="1" />`;continue}let d=`M${o} ${r}`;if(i){let c=`m${o-i.x} ${r-i.y}`;c.length<=d.length&&(d=c)}a+=`${d}h1v1${o<10?`H${o}`:"h-1"}Z`,i={x:o,y:r}}return e&&(n+=`<path d="${a}"/>`),n+"</svg>"}function nf(s){let e=s.W,t=e*e,n=126,a=Math.floor(t/n),i=t%n,r=new Uint8Array(408+a*(n+2)+2+i+4),o=0,d=g=>{r[o++]=g&255,r[o++]=g>>>8};for(let g of[71,73,70,56,55,97])r[o++]=g;d(e),d(e),r[o++]=246,o+=2,r[o++]=255,r[o++]=255,r[o++]=255,o+=381,r[o++]=44,o+=4,d(e),d(e),r[o++]=0,r[o++]=7;let{m:c,map:h}=s,f=new Uint8Array(e),_=-2;for(let g=0,v=0;g<e;g++){let k=h[g];if(k!==_&&(_=k,f.fill(0),k>=0))for(let S=0;S<e;S++)h[S]>=0&&(f[S]=rf(c,h[S],k));for(let S=0;S<e;){if(v%n===0){let q=t-v;r[o++]=(q<n?q:n)+1,r[o++]=128}let E=Math.min(n-v%n,e-S);r.set(f.subarray(S,S+E),o),o+=E,S+=E,v+=E}}return i===0&&(r[o++]=1,r[o++]=128),r[o++]=1,r[o++]=129,r[o++]=0,r[o++]=59,r}function ty(s){let e=s,t;if(typeof e.toBase64=="function")t=e.toBase64();else{let n="";for(let a=0;a<e.length;a+=8192)n+=String.fromCharCode(...e.subarray(a,a+8192));t=btoa(n)}return"data:image/gif;base64,"+t}function cf(s,e="raw",t={}){if(sf(s,"text"),sf(e,"output"),typeof t!="object"||t===null||Array.isArray(t))throw new TypeError(`"opts" expected object, got type=${typeof t}`);let n=t.version;n!==void 0&&(n=af(n));let a=t.ecc!==void 0?t.ecc:"medium";O5.includes(a)||tt(`invalid ecc=${a}`);let i=t.encoding!==void 0?t.encoding:I5(s);if(Dn[i]||tt(`invalid encoding=${i}`),i!=="byte"){let q=i==="numeric"?Hi.slice(0,10):Hi;for(let te of s)q.includes(te)||tt(`Unknown letter: "${te}". Allowed: ${q}`)}t.mask!==void 0&&(Al(t.mask,"opts.mask")<0||t.mask>7)&&tt(`invalid mask=${t.mask}`);let r=t.textEncoder;if(i==="byte"&&r===void 0){let q=Y5(n===void 0?40:n,a);(s.length>q||V5(s)>q)&&tt("Capacity overflow")}let o=i==="byte"?(r!==void 0?r:q=>new TextEncoder().encode(q))(s):void 0;if(o!==void 0&&!J5(o))throw new TypeError(`"opts.textEncoder" expected Uint8Array, got type=${typeof o}`);let d=i==="byte"?o.length:s.length,c=i==="numeric"?Math.floor(d/3)*10+[0,4,7][d%3]:i==="alphanumeric"?Math.floor(d/2)*11+d%2*6:d*8;if(n===void 0){for(n=1;n<=40;n++){let q=Dn[i][Math.floor((n+7)/17)];if(d<1<<q&&4+q+c<=Ui(n,a).capacity)break}n>40&&tt("Capacity overflow")}else{let q=Dn[i][Math.floor((n+7)/17)];(d>=1<<q||4+q+c>Ui(n,a).capacity)&&tt("Capacity overflow")}let h=W5(n,a,s,i,o),f=K5(n,a,h,t.mask),_=t.border===void 0?2:Al(t.border,"opts.border");if(_<=0)throw new RangeError(`invalid border=${_}`);let g=t.scale===void 0?1:Al(t.scale,"opts.scale");if(g<=0||g>1024)throw new RangeError(`invalid scale factor: ${g}`);let v=(f.size+2*_)*g,k=e==="ascii"||e==="gif"||e==="data-url"?4096:1024;if(v>k)throw new RangeError(`invalid opts: output is ${v}x${v} (max ${k}), reduce border/scale`);let S=new Int32Array(v);for(let q=0;q<v;q++){let te=Math.floor(q/g)-_;S[q]=te>=0&&te<f.size?te:-1}let E={m:f,W:v,map:S};return e==="raw"?X5(E):e==="ascii"?Q5(E):e==="term"?Z5(E):e==="svg"?ey(E,t.optimize===void 0?!0:t.optimize):e==="gif"?nf(E):e==="data-url"?ty(nf(E)):tt(`Unknown output: ${e}`)}var sy="medium",ny=4;function Fi(s){let e=cf(s,"raw",{ecc:sy,border:ny}),t=e.length,n="";return e.forEach((a,i)=>{for(let r=0;r<t;r++){if(!a[r])continue;let o=r;for(;a[r+1];)r++;n+=`M${o} ${i}h${r-o+1}v1H${o}z`}}),{size:t,path:n}}var ay=.01;function W(s){return s===null?"–":`${Math.abs(s)<ay?j(s,1):s.toFixed(2)} dB`}var ql="…".repeat(8),Cl=class extends w({result:m(u),book:m(u),joints:m(u),_refused:x(u)},me){static styles=[y,T,b`
      .address { max-width: 640px; margin-bottom: var(--space-3); }
      label { display: block; font-size: var(--type-small); font-weight: 600; }
      .labels {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(min(100%, 340px), 1fr)); gap: var(--space-3);
      }
      .label {
        display: flex; gap: var(--space-2); justify-content: space-between; padding: var(--space-2); color: #000;
        background: #fff;
        border: 1px dashed #666; break-inside: avoid;
      }
      .label p { font-size: var(--type-small); line-height: 1.3; }
      .label .name { font-size: var(--type-text); font-weight: 700; overflow-wrap: anywhere; }
      svg { flex: none; width: 128px; height: 128px; }
      @media print {
        .noprint { display: none; }
        .panel { border: 0; padding: 0; break-inside: auto; }
        .labels { display: block; font-size: 0; }
        .label {
          display: inline-flex; width: 88mm; height: 36mm; padding: 2mm; margin: 0 2mm 2mm 0; vertical-align: top;
          overflow: hidden;
        }
        .label p { font-size: var(--type-small); }
        .label .name { font-size: var(--type-lead); }
        svg { width: 31mm; height: 31mm; }
      }
    `];constructor(){super(),this.book=gt,this.joints=[],this._refused=""}render(){let e=Zt(this._refused);return l`<section class="panel">
      <h2>Labels</h2>
      <div class="address noprint">
        <label for="address">Address of the page in the codes</label>
        <input id="address" type="url" autocomplete="off" placeholder=${xo(location)} 
          .value=${this._refused||this.station.address}
          aria-invalid=${e?"true":"false"} aria-describedby="about" @change=${this._changed}>
        <p id="about" class=${e?"error":"quiet"}
          role=${e?"alert":"note"}>${e||this._about()}</p>
      </div>
      <div class="labels">${this.result.joints.map((t,n)=>this._label(t,this.joints[n]))}</div>
    </section>`}get _address(){return Ya(this.station,location)}_about(){let e=this.joints.length>0;return Et(this._address)?`Each code opens ${e?"its joint":"the derivation of its joint"} at ${this._address}.`:e?"This page is a file, so each code holds the joint’s own code as plain text; give the address of a served page, and the codes open the joint there.":"This page is a file, so its codes open on this device only; give the address of a served page, and they open there."}_changed(e){let t=e.target.value.trim();this._refused=Zt(t)?t:"",this._refused||this.stationStore.change("fitout",{address:t})}_label({halves:e,heading:t,inspection:n,label:a,torque:i},r){let{station:o}=this.result,d=Ue(r?bt(this.book,r.code):[]),c=d.fitted_on||a.date,h=_t({...d,fitted_on:c},n.interval_months),f=d.torque?`used ${d.torque}`:i.figures,_=r?Ym(this._address,r.code):Vm(this._address,a,this.vocabulary.first.matrix.powers_w),{size:g,path:v}=Fi(_);return l`<div class="label">
      <div>
        <p class="name">${a.name}${r?l` <small>${Le(r.code)}</small>`:p}</p>
        <p><b>${a.family}</b>${o?`, ${o}`:""}</p>
        <p class="joins">${e.map(({on:k})=>k).join(" to ")}</p>
        <p>Fitted ${c||ql} by ${d.fitted_by||ql}</p>
        ${f?l`<p class="torque">Torque ${f}</p>`:p}
        <p class="next">Next inspection ${h||ql}</p>
        <p>At ${M(a.frequency_hz)}: loss ${W(a.expected_loss_db)},
        return loss ${a.expected_return_loss_db.toFixed(0)} dB, least ${a.least_return_loss_db.toFixed(0)}
        dB</p>
      </div>
      <svg viewBox="0 0 ${g} ${g}" role="img"
        aria-label="Code that opens ${r?"":"the derivation of "}${t}"
        shape-rendering="crispEdges">
        ${Y`<rect width=${g} height=${g} fill="#fff"></rect><path d=${v} fill="#000"></path>`}
      </svg>
    </div>`}};customElements.define("jw-fitout-labels",Cl);function st(s,e,t){let n=Gm(s,e,t);return n?l`<small class="from">${n}</small>`:p}var us=({text:s,kind:e,source:t},n)=>l`${s} ${st([e],[t],n)}`,yt=(s,e)=>l`<ul>${s.map(t=>l`<li>${us(t,e)}</li>`)}</ul>`;function uf(s,e){let t=[];return s.forEach((n,a)=>{t.at(-1)?.at!==n.at&&t.push({at:n.at,first:a+1,steps:[]}),t.at(-1).steps.push(n)}),t.map(({at:n,first:a,steps:i})=>l`<h4>${n?`On ${n}`:"The pair"}</h4>
      <ol start=${a}>${i.map(r=>l`<li>${us(r,e)}</li>`)}</ol>`)}function Di(s,e){return l`<p class="sources">What carries no mark is common practice. ${[...s].map(([t,n])=>l`<span>[${n}] ${e.get(t)??t}. </span>`)}</p>`}var hf=10,pf=1e-9;function Rl({quantity:s,unit:e}){return e!=="m"?Math.ceil(s-pf):Math.ceil(ge(e).shown(s)*hf-pf)/hf}var mf=({unit:s})=>s==="m"?` ${ge(s).unit}`:"",iy=[["what",s=>s.what],["detail",s=>s.detail],["quantity",Rl],["unit",({unit:s})=>ge(s).unit],["family",s=>s.family],["cable",s=>s.cable]],ff=s=>Rt(iy,s);var Hs=b`
  h2 { font-size: var(--type-lead); }
  h3 { margin: 0 0 var(--space-1); }
  h4 { margin: var(--space-2) 0 var(--space-half); font-weight: 600; }
  ul, ol { margin: 0; padding-left: 1.25em; font-size: var(--type-text); }
  ol { padding-left: 1.9em; }
  li + li { margin-top: var(--space-1); }
  .from { color: var(--soft); font-size: var(--type-fine); line-height: 1.25; }
  .from::before { content: '– '; }
  .sources { color: var(--soft); font-size: var(--type-fine); }
  .columns { columns: 2 340px; column-gap: var(--space-6); margin-top: var(--space-3); }
  .columns > section { break-inside: avoid-column; padding-bottom: var(--space-3); }
  .warning {
    padding: var(--space-2) var(--space-3); margin-top: var(--space-2); border-left: 4px solid var(--alarm);
    background: var(--alarm-wash);
    border-radius: 4px; font-size: var(--type-text);
  }
  .figure { font-size: var(--type-lead); font-weight: 700; }
  .figure::first-letter { text-transform: uppercase; }
  .plain td { vertical-align: top; }
  @media print {
    h3 { margin-bottom: 0.5mm; break-after: avoid; }
    h4 { margin: 0.5mm 0 0; break-after: avoid; }
    ul, ol, p, .plain, .warning { font-size: var(--type-small); line-height: 1.12; }
    li + li { margin-top: 0; }
    li, tr { break-inside: avoid; }
    .sources { margin-top: 1mm; }
    .columns { columns: 2; column-gap: 6mm; margin-top: 2mm; }
    .columns > section { padding-bottom: 1mm; break-inside: auto; }
    .columns > #torque { break-inside: avoid; }
  }
`,gf=b`
  .beside { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); }
  details.panel { padding-top: 0; padding-bottom: 0; }
  details.panel[open] { padding-bottom: var(--space-3); }
  label { display: block; margin-bottom: var(--space-1); font-size: var(--type-small); font-weight: 600; }
  .switch { display: flex; gap: var(--space-2); align-items: center; min-height: var(--target); }
  .switch input { width: 22px; height: 22px; margin: 0; }
  @media screen and (max-width: 1179px) {
    .answer { display: contents; }
    .joints, jw-fitout-sheet, .waiting { order: -1; }
    .trouble { order: -2; }
  }
  .joints { display: flex; flex-wrap: wrap; gap: var(--space-2); }
  @media (min-width: 1180px) { jw-fitout-due { grid-column: 1 / -1; } }
  @media screen { jw-fitout-sheet:not([data-shown]) { display: none; } }
  @media print {
    .beside, .joints { display: none; }
    jw-fitout-sheet { break-before: page; }
    jw-fitout-sheet:first-of-type { break-before: auto; }
    jw-fitout-list, jw-fitout-labels { break-before: page; }
    [data-paper='sheets'] :is(jw-fitout-list, jw-fitout-labels),
    [data-paper='list'] :is(jw-fitout-sheet, jw-fitout-labels),
    [data-paper='labels'] :is(jw-fitout-sheet, jw-fitout-list, jw-cautions) { display: none; }
    [data-paper='list'] jw-fitout-list, [data-paper='labels'] jw-fitout-labels { break-before: auto; }
    [data-flowing] jw-fitout-sheet { break-before: auto; margin-bottom: 4mm; }
  }
`;var Nl=s=>`${s.toFixed(1)} dB`,ry=[["expected_loss_db","Loss of the line",W],["expected_return_loss_db","Return loss, expected",Nl],["least_return_loss_db","Return loss, least: below it something is wrong",Nl],["shorted_return_loss_db","Return loss with the far end shorted",Nl]],Ll=class extends w({result:m(u),titles:m(u)}){static styles=[y,T,Hs,b`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); }
      .head {
        display: flex; flex-wrap: wrap; gap: var(--space-2); justify-content: space-between; align-items: center;
      }
      p { font-size: var(--type-text); }
      .plain { margin: var(--space-1) 0 var(--space-2); }
      @media print { button { display: none; } .panel { border: 0; padding: 0; break-inside: auto; } }
    `];render(){let{bonding:e,marks:t,measurement:n,quantities:a}=this.result,i=zi(n,{bonding:e});return l`<section class="panel" id="quantities">
        <div class="head"><h2>What to get</h2>
          <button ?disabled=${a.length===0}
            @click=${()=>K("jointwise-quantities.csv","text/csv",ff(a))}>List as
            CSV</button></div>
        <table class="plain">
          <thead><tr><th scope="col">What</th><th scope="col">Detail</th><th scope="col"
            class="number">Quantity</th></tr></thead>
          <tbody>${a.map(r=>l`<tr><th scope="row">${r.what}</th><td>${r.detail}</td><td
                class="number">${Rl(r)}${mf(r)}</td></tr>`)}</tbody>
        </table>
        ${t.map(r=>l`<p class="warning">${r}</p>`)}
      </section>
      <section class="panel" id="measurement">
        <h2>First measurement</h2>
        <p>At ${M(n.frequency_hz)}, with a good load of ${j(n.load_ohm)} Ω in place of
        the antenna:</p>
        <table class="plain"><tbody>${ry.filter(([r])=>n[r]!==null).map(([r,o,d])=>l`<tr data-field=${r}><th scope="row">${o}</th><td
              class="number">${d(n[r])}</td></tr>`)}</tbody></table>
        ${yt(n.advice,i)}
      </section>
      ${e.length>0?l`<section class="panel" id="bonding"><h2>Bonding and
          lightning</h2>${yt(e,i)}</section>`:p}
      ${Di(i,this.titles)}`}};customElements.define("jw-fitout-list",Ll);var Lt={fitted_by:"Fitted by",fitted_on:"Fitted on",torque:"Torque used",sealed:"Sealed with",inspected_on:"Last inspected",state:"State",note:"Note"},Gi={good:"good",watch:"to be watched",faulty:"faulty"},Us=(s,e)=>(s==="state"?Gi[e]:e)||"taken back",bf=s=>new Date(s).toLocaleString("sv-SE",{dateStyle:"short",timeStyle:"short"});var oy={overdue:", overdue",soon:", due now",faulty:"",later:"","":""},zl=class extends w({joint:m(u),sheet:m(u),entries:m(u),sweeps:m(u),changed:{type:String},open:{type:Boolean}}){static styles=[y,ne,b`
      :host { margin-top: var(--space-2); }
      label { display: grid; gap: var(--space-1); font-size: var(--type-small); font-weight: 600; }
      label > * { font-weight: 400; }
      .fields, table, .row { margin-bottom: var(--space-2); }
      .row { display: flex; flex-wrap: wrap; gap: var(--space-2); }
      textarea {
        width: 100%; min-height: var(--target); padding: var(--space-2) var(--space-2); font: inherit;
        font-size: var(--type-text); color: inherit;
        background: var(--card); border: 1px solid var(--edge); border-radius: var(--round); resize: vertical;
      }
      .not { color: var(--alarm); font-weight: 700; }
      @media print { .row, summary { display: none; } textarea { field-sizing: content; } }
    `];constructor(){super(),this.changed="",this.open=!1}render(){let e=Ue(this.entries);return l`<details class="more" id="record" ?open=${this.open}>
      <summary>Joint book, ${Le(this.joint.code)} <small>${this._summary(e)}</small></summary>
      ${this.changed?l`<p class="quiet">When this was last written it was ${this.changed}. Is it still the same
        joint? Give it a name in the Line view, and its record follows it.</p>`:p}
      <div class="fields">
        ${this._input("fitted_on",e,"date")} ${this._input("fitted_by",e,"text")}
        ${this._input("torque",e,"text",this.sheet.torque.figures)} ${this._input("sealed",e,"text")}
        ${this._input("inspected_on",e,"date")}
        <label>${Lt.state}<select id="state" @change=${this._entered}>
          ${["",...Ti].map(t=>l`<option value=${t} .selected=${t===e.state}>${Gi[t]??"not given"}</option>`)}
        </select></label>
        <label class="wide">${Lt.note}<textarea id="note" rows="2" maxlength=${$l("note")}
          .value=${e.note} @change=${this._entered}></textarea></label>
      </div>
      <div class="row">
        <button id="fitted-today" @click=${()=>this._enter("fitted_on",Ae())}>Fitted today</button>
        <button id="inspected-today" @click=${()=>this._enter("inspected_on",Ae())}>Inspected today</button>
      </div>
      ${this._sweeps()} ${this._history()}
    </details>`}_summary(e){if(this.entries.length===0)return"nothing entered yet";let t=_t(e,this.sheet.inspection.interval_months),n=Mi(e,t,Ae()),a=t&&l`next inspection ${t}${oy[n]}`;return[e.fitted_on&&`fitted ${e.fitted_on}`,e.inspected_on&&`inspected ${e.inspected_on}`,Gi[e.state],a&&l`<span class=${n==="overdue"?"not":""}>${a}</span>`].filter(Boolean).map((r,o)=>l`${o>0?", ":""}${r}`)}_input(e,t,n,a=""){return l`<label>${Lt[e]}<input id=${e} type=${n} autocomplete="off" placeholder=${a}
      maxlength=${$l(e)??p} .value=${t[e]} @change=${this._entered}></label>`}_sweeps(){return this.sweeps.length===0?p:l`<h3>Sweeps of it</h3>
      <table class="plain" id="sweeps">
        <thead><tr><th scope="col">Day</th><th scope="col" class="number">Excess reflection</th><th scope="col">What the
          sweep told of the line</th></tr></thead>
        <tbody>${this.sweeps.map(({date:e,excess:t,verdict:n})=>l`<tr><th scope="row">${e}</th><td class="number">${t===null?"–":t.toFixed(3)}</td><td
              >${n}</td></tr>`)}</tbody>
      </table>`}_history(){return this.entries.length===0?p:l`<details><summary>Every entry <small>${this.entries.length}</small></summary>
      <table class="plain" id="entries">
        <thead><tr><th scope="col">Written</th><th scope="col">Of</th><th scope="col">Entry</th></tr></thead>
        <tbody>${this.entries.toReversed().map(({at:e,field:t,value:n})=>l`<tr><td>${bf(e)}</td><th scope="row">${Lt[t]}</th><td
              >${Us(t,n)}</td></tr>`)}</tbody>
      </table></details>`}_entered({target:{id:e,value:t}}){this._enter(e,t.trim())}_enter(e,t){t!==Ue(this.entries)[e]&&$(this,"jw-joint-entry",{field:e,value:t})}};customElements.define("jw-fitout-record",zl);var Pl=class extends w({sheet:m(u),numbers:m(u)}){static styles=[y,Hs,b`
      :host { display: contents; }
      section { padding-bottom: var(--space-3); break-inside: avoid-column; }
      @media print { section { padding-bottom: 1mm; break-inside: auto; } }
      .not { color: var(--alarm); font-weight: 700; }
    `];render(){let{galvanic:e,inspection:t,near_relatives:n,wear:a}=this.sheet,{numbers:i}=this;return l`<section id="galvanic"><h3>Metals that meet</h3>
        <ul>${e.map(r=>l`<li><span class=${r.passed?"":"not"}>${r.contact}: ${r.sentence}</span>
            ${st(r.kinds,r.sources,i)}</li>`)}</ul></section>
      <section id="inspection"><h3>Inspect</h3>
        <p>Every ${t.interval_months} months${t.due?l`, next by <b>${t.due}</b>`:""}${t.note?`; ${t.note}`:""}.
        ${st([t.kind],[t.source],i)}</p>
        ${yt(t.checks,i)}</section>
      <section id="wear"><h3>Wear</h3><p>${a.sentence} ${st([a.kind],[a.source],i)}</p></section>
      ${n.length>0?l`<section id="relatives"><h3>Look-alikes: do not mate</h3>
            <ul>${n.map(r=>l`<li><b>${r.name}, ${r.verdict}.</b> ${us(r,i)}</li>`)}</ul></section>`:p}`}};customElements.define("jw-fitout-care",Pl);var Il=class extends w({sheet:m(u),titles:m(u),of:{type:String}}){static styles=[y,ae,Hs,b`
      article {
        padding: var(--space-4) var(--space-4); background: var(--card); border: 1px solid var(--line);
        border-radius: var(--round);
      }
      @media print { article { padding: 0; border: 0; } }
    `];render(){let{sheet:e}=this,t=this._numbers;return l`<article aria-labelledby="heading">
      <h2 id="heading">${e.heading}${ce(e.pack)}</h2>
      ${this.of?l`<p class="quiet">${this.of}</p>`:p}
      <slot></slot>
      ${e.warnings.map(n=>l`<p class="warning"><b>${n.name}.</b> ${n.sentence} ${st([n.kind],[n.source],t)}</p>`)}
      <div class="columns">
        <section id="parts"><h3>Parts</h3>${this._parts()}</section>
        <section id="tools"><h3>Tools</h3>${yt(e.tools,t)}</section>
        <section id="steps"><h3>Steps</h3>${uf(e.steps,t)}</section>
        <section id="torque"><h3>Torque</h3>${this._torque()}</section>
        <section id="sealing"><h3>Sealing</h3>${this._sealing()}</section>
        ${this._cable()}
        <jw-fitout-care .sheet=${e} .numbers=${t}></jw-fitout-care>
      </div>
      ${Di(t,this.titles)}
    </article>`}get _numbers(){return zi(this.sheet)}_parts(){let{adapter:e,gender:t,halves:n}=this.sheet;return l`<table class="plain"><thead><tr><th scope="col">Plug or jack</th><th scope="col">On</th><th
      scope="col">Put on by</th></tr></thead>
      <tbody>${n.map(a=>l`<tr><th scope="row">${this.sheet.family_name} ${a.half}</th>
          <td>${a.on}${a.cable_diameter_m===null?"":`, ${ns(a.cable_diameter_m)}`}</td><td
            >${a.attachment||"–"}</td></tr>`)}</tbody></table>
      <ul>${e?l`<li>Adapter: ${e}</li>`:p}<li>${us(t,this._numbers)}</li></ul>`}_torque(){let{torque:e}=this.sheet;return l`<p class="figure">${e.sentence}</p>
      <p class="quiet">${e.notes.join("; ")}</p>${st(e.kinds,e.sources,this._numbers)}`}_sealing(){let{sealing:e}=this.sheet,t=this._numbers,n=e.mated_meaning.map(({text:a})=>a).join("; ");return l`<p class=${e.refused?"warning":""}>${e.sentence}
    ${st([e.kind],[e.source],t)}</p>
      <p class="quiet">Mated: ${e.mated}${n&&`, ${n}`}.</p>
      ${this._part("Prepare",e.preparation)}
      ${e.layers.length>0?l`<h4>Layers, from the inside out</h4>
            <ol class="layers">${e.layers.map(a=>l`<li><b>${a.name}</b>, ${Te(a.length_m,2)}. ${us(a,t)}</li>`)}</ol>`:p}
      ${this._part("Lead the water away",e.water)}`}_part(e,t){return t.length>0?l`<h4>${e}</h4>${yt(t,this._numbers)}`:p}_cable(){let{bends:e,relief:t}=this.sheet;return e.length+t.length===0?p:l`<section id="bends"><h3>Bends and strain relief</h3>
      <ul>${e.map(n=>l`<li>${this._bend(n)}</li>`)}</ul>${yt(t,this._numbers)}</section>`}_bend(e){let t=e.repeated_radius_m===null?"not to be bent again":`bent again and again: ${ns(e.repeated_radius_m)}`,n=[e.fixed_kind,e.repeated_kind].filter(Boolean),a=[e.fixed_source,e.repeated_source].filter(Boolean);return l`${e.name}, smallest radius laid once: ${ns(e.fixed_radius_m)}; ${t}.
      ${st(n,a,this._numbers)}`}};customElements.define("jw-fitout-sheet",Il);function Kn({name:s,request:e},t){let n=(o,d)=>d===null?[]:[`${o}=${encodeURIComponent(d)}`],[a,i,r]=[n("view","line"),n("name",s),n("open",t)];return za([...a,...i,...r].join("&"),"line",e,[...a,...r].join("&"))}function Ki(s,e){let t=new URLSearchParams(s),{document:n,problem:a}=Pa(s,{key:"line",names:["view","name","open"],read:r=>wo(r,e),what:"line",instead:"Your own lines are shown instead."});return{line:n&&{name:(t.get("name")||"Line from a link").slice(0,On),request:n},open:t.get("open")||null,problem:a}}var ly=["line","line_name"];function Wl(s,e){let t=new URLSearchParams(Kn(e,null).fragment);return t.has("line")?{fragment:`${s}&line=${t.get("line")}&line_name=${encodeURIComponent(e.name)}`,whole:!0}:{fragment:s,whole:!1}}function _f(s,e){let n=s.split("&").filter(d=>!ly.includes(d.split("=")[0])).join("&"),a=new URLSearchParams(s);if(!a.has("line"))return{line:void 0,rest:n,problem:""};let i=encodeURIComponent(a.get("line_name")??""),{line:r,problem:o}=Ki(`view=line&line=${a.get("line")}&name=${i}`,e);return{line:r,rest:n,problem:o}}function wf(s){let e=s.split("&").filter(t=>!t.startsWith("joint="));return{joint:new URLSearchParams(s).get("joint")??"",rest:e.join("&")}}var dy=[["all","everything"],["sheets","joint sheets"],["list","list and measurement"],["labels","labels"]],cy="This browser keeps nothing for the page, so the line at hand is the example. Choose a single joint, or open a link that holds your line.",uy=["station","date"],Vn=class extends w({_line:x(u),_paper:x(u),_flowing:x(u)},Ze){static view="fitout";static ownNames=["of","shown","station","date","family","adapter_to","name","cable","length_m"];static styles=[y,ne,T,Qe,gf];constructor(){super(),this._ownLine=u,this._lines=[],this._book=new ve(Ws,V,{},gt),this._book.attach(this,()=>this.requestUpdate()),this._opened="",this._paper="all",this._flowing=!1,this._fitout=this._enquiry("fitout"),this._catalogue=this._enquiry("catalogue")}get _state(){return{...super._state,station:this.station.name}}render(){let{error:e,result:t}=this._fitout;return l`${this._progress(this._fitout)}
      <main @jw-fitout-change=${({detail:n})=>this._change(n.changes)}
        @jw-fitout-own=${()=>this._useOwn()}>
        ${this._trouble()}
        <div class="beside noprint">
          <jw-fitout-form .state=${this._state} .line=${this._atHand} .linked=${this._line!==void 0}
            .refusal=${e}></jw-fitout-form>
          ${this._due()} ${this._onPaper()}
        </div>
        ${this._isEmpty?l`<p class="waiting empty quiet">This line has no element yet.</p>`:t?this._answer(t):l`<p class="waiting quiet">${e?e.message:"Calculating…"}</p>`}
      </main>`}_onPaper(){return l`<details class="panel">
      <summary>More settings</summary>
      <label for="paper">On paper</label>
      <select id="paper" @change=${e=>this._paper=e.target.value}>
        ${dy.map(([e,t])=>l`<option value=${e} .selected=${e===this._paper}>${t}</option>`)}
      </select>
      <label class="switch"><input id="flowing" type="checkbox" .checked=${this._flowing}
        @change=${e=>this._flowing=e.target.checked}>Several joints a page</label>
    </details>`}get ways(){let[e,t]=super.ways;return[{...e,run:()=>this._copy()},t]}_answer(e){let t=Km(this._catalogue.result),n=[e.station,e.date].filter(Boolean).join(", "),a=Math.min(this._state.shown,e.joints.length),i=this._joints;return l`<div class="answer" data-paper=${this._paper} ?data-flowing=${this._flowing}>
      <p class="unseen" role="status"
        >${e.joints.length===1?"One sheet.":`${e.joints.length} sheets.`}</p>
      ${e.joints.length===0?l`<p class="trouble">This line has no joint, so there is nothing to fit but its cable.</p>`:p}
      ${e.joints.length>1?l`<div class="joints" role="group" aria-label="Joints">${e.joints.map(({number:r,label:o,family_name:d})=>l`<button class="choice" aria-pressed=${r===a}
                  @click=${()=>this._change({shown:r})}>${o.name}, ${d}</button>`)}</div>`:p}
      ${e.joints.map(r=>l`<jw-fitout-sheet ?data-shown=${r.number===a} .sheet=${r} .titles=${t}
            of=${n}>${this._record(r,i[r.number-1])}</jw-fitout-sheet>`)}
      <jw-fitout-list .result=${e} .titles=${t}></jw-fitout-list>
      <jw-cautions .cautions=${e.cautions}></jw-cautions>
      ${e.joints.length>0?l`<jw-fitout-labels .result=${e} .joints=${i}
        .book=${this._book.present}></jw-fitout-labels>`:p}
    </div>`}get _joints(){let{answered:e}=this._fitout;if(this._line||this._state.of!=="line"||!e)return[];let{name:t,request:n}=this._ownLine;return JSON.stringify(e.elements)!==JSON.stringify(n.elements)?[]:ze({name:t,request:n})}_due(){let e=this._book.present,t=this._fitout.result?.joints??[],a=this._joints.map(({code:o},d)=>this._written(t[d],o)),i=new Set(this._lines.flatMap(ze).map(({code:o})=>o)),r=new Map(a.map(o=>[o.code,o]));return l`<jw-fitout-due class="noprint" .standings=${Cm(e,this._lines,r,Ae())}
      .strays=${Mm(e,i)} .joints=${a.map(({code:o,name:d,joins:c})=>({code:o,words:`${d}: ${c}`}))}
      @jw-joint-given=${({detail:o})=>this._enter(o.record,{field:"belongs_to",value:o.to})}
      ></jw-fitout-due>`}_record(e,t){if(!t)return p;let n=this._book.present,{joins:a}=this._written(e,t.code),i=n.joints.find(({code:o})=>o===t.code)?.joins??a,r=Nt.recalled(V).document??[];return l`<jw-fitout-record .joint=${t} .sheet=${e} .entries=${bt(n,t.code)}
      .sweeps=${Ni(r,this._ownLine.name,t)} changed=${i===a?"":i}
      ?open=${t.code===this._opened}
      @jw-joint-entry=${({detail:o})=>this._enter(this._written(e,t.code),o)}></jw-fitout-record>`}_written({family_name:e,halves:t,inspection:n,label:a},i){let r=`${e} between ${t.map(({on:o})=>o).join(" and ")}`;return{code:i,line:this._ownLine.name,name:a.name,joins:r,months:n.interval_months}}_enter({code:e,line:t,name:n,joins:a,months:i},r){let{present:o}=this._book;this._book.put(Am(o,{code:e,line:t,name:n,joins:a,months:i},r,Date.now())),this._book.problem&&this._notice({text:this._book.problem}),this.requestUpdate()}_trouble(){let{error:e,result:t}=this._fitout;if(!e)return p;let n=this._state.of==="line"?uy.includes(Fn(e)):Fn(e)in this.vocabulary.fields.fitout,a=t?"Out of date: these are the sheets before the last change. ":"";return n&&!a?p:l`<p class="trouble" role="alert">${a}${e.message} <button
      @click=${()=>this._ask(!0)}>Try again</button></p>`}get _atHand(){return this._line??this._ownLine}get _isEmpty(){return this._state.of==="line"&&this._atHand.request.elements.length===0}get _request(){return this._state.of==="line"?Ii(this._state,wt(this._atHand.request,this.station,this.vocabulary)):Xm(this._state,Object.keys(Bn(H.requests.fitout)))}_ask(e=!1){if(this._isEmpty)return;let t=JSON.stringify(this._request);!e&&t===this._asked||(this._asked=t,this._fitout.askNext(this._request),["initial","error"].includes(this._catalogue.status)&&this._catalogue.ask({}))}_change({station:e,...t}){e===void 0?super._change(t,{isStep:!("shown"in t)}):this.changeStation({name:e})}_useOwn(){this._line=void 0,this._address(!1)}get _fragment(){return this._line?Wl(super._fragment,this._line).fragment:super._fragment}_restore(e){let{fields:t}=this.vocabulary,{line:n,rest:a,problem:i}=_f(e,t),{joint:r,rest:o}=wf(a),{unknown:d=[]}=super._restore(o)??{};this._takeName();let c=Fe.recalled(V,t),h=c.document??ht;return this._lines=h.lines,this._ownLine=Re(h),this._line=n,r?this._open(Oi(r),h):i?{text:i,unknown:d}:c.problem&&!n&&d.length===0?this._lost(c):{unknown:d}}_open(e,{lines:t,current:n}){if(!ds.test(e))return{text:"The joint in this link is not a code; allowed: eight digits and letters."};let a=r=>ze(r).some(o=>o.code===e),i=a(t[n])?n:t.findIndex(a);if(i===-1)return{text:`No line kept in this browser has a joint ${Le(e)}. Open the saved page or the station file that it belongs to, under Share and save.`};i!==n&&Fe.remember(V,{lines:t,current:i}),this._line=void 0,this._ownLine=t[i],this._opened=e,this._own={...this._own,of:"line",shown:ze(t[i]).findIndex(r=>r.code===e)+1}}_takeName(){let{station:e,...t}=this._own;e&&(this._own=t,this.stationStore.put({...this.station,name:e}))}_lost({problem:e,spoilt:t}){return t?{text:e,action:{words:"Save them",run:()=>K("jointwise-lines-unread.txt","text/plain",t)}}:{text:cy}}async _copy(){let e=super._fragment,{fragment:t,whole:n}=this._state.of==="line"?Wl(e,this._atHand):{fragment:e,whole:!0};n?await this._copyLink(t):this._notice({text:"This line is too long for a link; export it in the Line view instead."})}};customElements.define("jw-fitout-view",Vn);var yf=({bands:s,cables:e,families:t})=>({"fitout.of":{label:"Sheets for",options:{line:"the whole line",joint:"a single joint"}},"fitout.station":{label:"Station"},"fitout.date":{label:"Day of fitting"},"fitout.family":{label:"Connector",entries:je(t)},"fitout.adapter_to":{label:"Adapter to",options:fe("no adapter",je(t))},"fitout.name":{label:"Name on the label"},"fitout.cable":{label:"On this cable",options:fe("no cable",e)},"fitout.length_m":{label:"Length of the cable",unit:"m"},"fitout.power_w":{label:"Power, peak envelope"},"fitout.band":{label:"Band",options:fe("spot frequency",s)},"fitout.frequency_hz":{label:"Spot frequency",factor:1e6,unit:"MHz"}});var vf={id:Vn.view,label:"Fit-out",description:"How to fit, seal and look after each joint of your line, with labels to print.",fields:wm,words:yf,upright:!0,element:({transport:s,stage:e})=>l`<jw-fitout-view class="view" .transport=${s} .stage=${e}></jw-fitout-view>`};var $f=({requests:s,parts:e},{cables:t,conditions:n,families:a,modes:i})=>({port:At(e.Port,{family:a}),owned:At(e.OwnedAdapter,{one_family:a,other_family:a}),kit:At(s.kit,{mode:i,condition:n,cable:t})});function Vi(s,{settings:e},{fields:t}){let n=Object.keys(e).filter(i=>Object.hasOwn(t.kit,i));return{...Object.fromEntries(n.map(i=>[i,e[i]])),...s}}function xf(s,{settings:e},{fields:t,first:n}){let a=i=>JSON.stringify(s[i])!==JSON.stringify(e[i]??n.settings[i]);return Object.keys(s).filter(i=>Object.hasOwn(t.settings,i)&&a(i))}var kf=(s,e)=>Object.fromEntries(Object.entries(s).filter(([t])=>!e.includes(t)));function De(s,e,t){let n=s.find(({id:o})=>o===e),[a,i]=Mo(n).split(" / "),r=t==="plug"?a:i;return`${n?.name??e} ${t}${r?` (${r})`:""}`}var Fs=(s,e)=>e.map(({name:t,family:n,gender:a},i)=>t?e.filter(r=>r.name===t).length>1?`${t} (port ${i+1})`:t:`port ${i+1} (${De(s,n,a)})`),nt=([s,e],t)=>`${t[s]} – ${t[e]}`,Yi=({highest_frequency_hz:s,power_w:e})=>`up to ${M(s)}, ${e===void 0?"any power":C(e)}`;var Ds=class{#e;#t;pixels;constructor(e,t){this.#e=e,this.pixels=t,this.#t=new ResizeObserver(([{contentRect:n}])=>this.#s(Math.round(n.width))),e.addController(this)}hostConnected(){this.#t.observe(this.#e)}hostDisconnected(){this.#t.disconnect()}#s(e){e===0||e===this.pixels||(this.pixels=e,this.#e.requestUpdate())}};var py=[.5,.42,.58,.34,.66,.27,.73,.2,.8],Bl=(s,e,t)=>({x:s.x+(e.x-s.x)*t,y:s.y+(e.y-s.y)*t}),my=(s,e)=>Math.hypot(s.x-e.x,s.y-e.y);function jf(s,e){return s.length===1?s[0]:jf(s.slice(1).map((t,n)=>Bl(s[n],t,e)),e)}var Sf=({x:s,y:e})=>`${s.toFixed(1)} ${e.toFixed(1)}`;function fy([s,...e]){return`M${Sf(s)}${e.length===3?"C":"Q"}${e.map(Sf).join(" ")}`}function gy(s,e){let t=Math.min(Math.max(s*48,280),560),n={x:e/2,y:t/2},[a,i]=[e/2-150-10,t/2-44];return{points:Array.from({length:s},(o,d)=>{let c=2*Math.PI*d/s-Math.PI/2,[h,f]=[Math.cos(c),Math.sin(c)],_=Math.abs(h)<.2;return{x:n.x+a*h,y:n.y+i*f,anchor:_?"middle":h>0?"start":"end",label:_?{x:0,y:f<0?-27:22}:{x:h>0?13:-13,y:-3}}}),height:t,curve:(o,d)=>[o,Bl(Bl(o,d,.5),n,.15),d]}}function by(s,e,t){let n=Array.from({length:s},(r,o)=>({x:150,y:44*(o+.5),anchor:"end",label:{x:-13,y:-3}})),a=(e-150-22)/.75/t,i=(r,o)=>{let d=150+a*Math.abs(r.y-o.y)/44;return[r,{x:d,y:r.y},{x:d,y:o.y},o]};return{points:n,height:44*s,curve:i}}function Ef(s,e,t){let n=Math.max(1,...e.map(([c,h])=>Math.abs(c-h))),{points:a,height:i,curve:r}=t<560?by(s,t,n):gy(s,t),o=[],d=e.map(([c,h])=>{let f=r(a[c],a[h]),_=py.map(v=>jf(f,v)),g=_.find(v=>o.every(k=>my(k,v)>=26));return o.push(g??_[0]),{path:fy(f),mark:o.at(-1)}});return{height:i,ports:a,lines:d}}var Of=({joined:s,trap:e})=>`${s?s.adapters.length:"no"}${e?"!":""}`;function Tf(s,{pairs:e,joined:t}){let n=e.length-t,a=n===0?"all can be joined":`${t} can be joined, ${n} can’t`,i=e.length===1?"1 pair":`${e.length} pairs`;return`${s} ports and ${i}: ${a}. Every pair is in the list below.`}var _y=720,Mf=22,wy=s=>s.length>Mf?`${s.slice(0,Mf-1)}…`:s,Hl=class extends w({result:m(u),ports:m(u),names:m(u)},O){static styles=[y,b`
      svg { display: block; width: 100%; height: auto; }
      text { fill: var(--ink); font-size: var(--type-fine); font-weight: 600; }
      .end { fill: var(--soft); font-size: var(--type-fine); font-weight: 400; }
      .dot { fill: var(--card); stroke: var(--ink); stroke-width: 2; }
      .line { fill: none; stroke: var(--edge); stroke-width: 2; }
      [data-added] .line { stroke: var(--ink); stroke-width: 3; }
      [data-apart] .line { stroke: var(--alarm); stroke-dasharray: 5 5; }
      .plate { fill: var(--card); stroke: var(--edge); }
      [data-added] .plate { stroke: var(--ink); }
      [data-apart] .plate { stroke: var(--alarm); }
      .mark { font-size: var(--type-fine); text-anchor: middle; }
      .legend { margin-top: var(--space-2); }
      @media print { svg { max-height: 110mm; } }
    `];constructor(){super(),this._width=new Ds(this,_y)}render(){let{ports:e,result:t}=this;if(e.length>24)return l`<p class="quiet">More than ${24} ports are not drawn; the list below has every pair.</p>`;let n=Ef(e.length,t.pairs.map(a=>a.ports),this._width.pixels);return l`<svg viewBox="0 0 ${this._width.pixels} ${n.height}" role="img"
      aria-label=${Tf(e.length,t)}>
        ${n.lines.map(({path:a},i)=>Y`<g ?data-added=${this._added(i)} ?data-apart=${this._apart(i)}><path class="line"
              d=${a}></path></g>`)}
        ${n.lines.map(({mark:a},i)=>this._mark(a,i))}
        ${n.ports.map((a,i)=>this._port(a,i))}
      </svg>
      <p class="quiet legend">The number on a line is how many adapters join the two; 0: they mate
        directly. Thick: some must be added. Dashed, “no”: can’t be joined.${t.pairs.some(({trap:a})=>a)?" “!”: looks as if it fits without, but must not be tried.":p}</p>`}_apart(e){return this.result.pairs[e].joined===null}_added(e){let{joined:t,joined_by_owned:n}=this.result.pairs[e];return t!==null&&n===null}_mark({x:e,y:t},n){let a=Of(this.result.pairs[n]),i=10+7*a.length;return Y`<g data-line=${this.result.pairs[n].ports.join("-")} ?data-added=${this._added(n)}
      ?data-apart=${this._apart(n)}>
      <rect class="plate" x=${e-i/2} y=${t-9} width=${i} height="18" rx="5"></rect>
      <text class="mark" x=${e} y=${t+4}>${a}</text>
    </g>`}_port({x:e,y:t,anchor:n,label:a},i){let{family:r,gender:o}=this.ports[i];return Y`<g>
      <circle class="dot" cx=${e} cy=${t} r="7"></circle>
      <text x=${e+a.x} y=${t+a.y} text-anchor=${n}>${wy(this.names[i])}</text>
      <text class="end" x=${e+a.x} y=${t+a.y+13}
        text-anchor=${n}>${De(this.vocabulary.lists.families,r,o)}</text>
    </g>`}};customElements.define("jw-kit-graph",Hl);function Ul({joints:s},[e,t],n){let a=(r,o)=>De(n,r[`${o}_family`],r[`${o}_gender`]),i=s.slice(1).map((r,o)=>`${a(s[o],"other")}/${a(r,"one")} adapter`);return[`${e}, ${a(s[0],"one")}`,...i,`${a(s.at(-1),"other")}, ${t}`].join(" – ")}var Fl=({frequency_hz:s,power_w:e})=>`${M(s)}, ${C(e)}`,Dl=({loss_db:s,return_loss_db:e})=>`loses ${W(s)}, return loss ${e.toFixed(0)} dB at worst`,qf=({joints:s})=>[...new Set(s.flatMap(({notes:e})=>e))],yy=(s,e)=>JSON.stringify(s.adapters)===JSON.stringify(e.adapters);function Cf({joined:s,joined_by_owned:e},t,n){return s?e?s.adapters.length===0?"Needs no adapter.":yy(s,e)?"With what you own already.":`With what you own alone: ${Ul(e,t,n)}, ${Dl(e)}.`:"What you own is not enough.":""}function Rf({pairs:s}){let e=new Map;for(let{trap:t,ports:n}of s)t&&e.set(t,[...e.get(t)??[],n]);return[...e].map(([t,n])=>({sentence:t,pairs:n}))}var Nf=({ports:s},{pairs:e})=>{let t=new Set(e.flatMap(n=>n.ports));return s.map((n,a)=>a).filter(n=>!t.has(n))},vy={fewest:"Fewest adapters",best_joints:"Best joints"};function Lf({goal:s,added:e,optimal:t,price:n}){let a=(i,r)=>`${r?"":"at most "}${i}`;return Object.entries(vy).map(([i,r])=>{let o=i===s,d=o?a(e,t):a(n.added,n.optimal);return{id:i,isChosen:o,words:`${r}: ${d}`,price:o?"":n.sentence}})}var Gl=class extends w({pairs:m(u),names:m(u)},O){static styles=[y,R(z),b`
      ol { list-style: none; margin: 0; padding: 0; }
      li {
        display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: var(--space-half) var(--space-3);
        padding: var(--space-2) 0;
        border-bottom: 1px solid var(--line); align-items: start; break-inside: avoid;
      }
      li > :not(h3, .chip) { grid-column: 1 / -1; }
      h3 { font-size: var(--type-text); }
      p { font-size: var(--type-text); }
      .chip { min-width: 4.8em; font-size: var(--type-small); }
      .mind { padding-left: var(--space-3); border-left: 3px solid var(--alarm); }
      @media print {
        ol { columns: 2; column-gap: 6mm; }
        li { padding: 0.5mm 0; gap: 0 2mm; }
        h3 { line-height: 1.25; }
        p { line-height: 1.25; }
        .owned { display: none; }
      }
    `];render(){return l`<ol>${this.pairs.map(e=>this._pair(e))}</ol>`}_pair(e){let{joined:t,ports:n,sentence:a,trap:i}=e,{families:r}=this.vocabulary.lists,o=n.map(h=>this.names[h]),d=t?`${Fl(e)}: ${Dl(t)}`:Fl(e),c=Cf(e,o,r);return l`<li data-pair=${n.join("-")}>
      <h3>${nt(n,this.names)}</h3>
      ${$y(t)}
      <p class="chain">${t?Ul(t,o,r):a}</p>
      <p class="quiet">${d}${c?l`<span class="owned">. ${c}</span>`:p}</p>
      ${i?l`<p class="mind">As they are: ${i}</p>`:p}
      ${t?qf(t).map(h=>l`<p class="mind">${h}</p>`):p}
    </li>`}};function $y(s){if(!s)return l`<span class="chip none">no</span>`;let{margin_db:e}=s;return e===null?l`<span class="chip" data-step="holds">receive</span>`:l`<span class="chip" data-step=${G(e)}>${A(e)} dB</span>`}customElements.define("jw-kit-joins",Gl);var Kl=class extends w({result:m(u),answered:m(u),names:m(u)}){static styles=[y,T,b`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); align-content: start; }
      ul { padding-left: 1.1em; font-size: var(--type-text); }
      @media print {
        :host { display: block; }
        .panel { margin-bottom: 2mm; }
        .long { break-inside: auto; }
        /* one sheet: a trap is told at its pair */
        #graph, #traps { display: none; }
      }
    `];render(){let{answered:e,names:t,result:n}=this,a=Rf(n);return l`<section class="panel" id="graph"><h2>Ports and pairs</h2><jw-kit-graph .result=${n}
      .ports=${e.ports} .names=${t}></jw-kit-graph></section>
      ${a.length>0?l`<section class="panel" id="traps"><h2>Looks as if it fits <small>but must not be tried</small></h2>
            <ul>${a.map(({sentence:i,pairs:r})=>l`<li><b>${r.map(o=>nt(o,t)).join("; ")}</b>: ${i}</li>`)}</ul></section>`:p}
      <section class="panel long" id="pairs"><h2>Pair by pair <small>with the smallest margin of its
      joints</small></h2><jw-kit-joins .pairs=${n.pairs} .names=${t}></jw-kit-joins></section>
      <jw-cautions .cautions=${n.cautions}></jw-cautions>`}};customElements.define("jw-kit-answer",Kl);var Yn=({one_family:s,one_gender:e,other_family:t,other_gender:n})=>[`${s} ${e}`,`${t} ${n}`].sort().join(" / "),Vl=s=>`${s.from} ${Yn(s)}`,zf=new WeakMap;function Gs(s){let{ticked:e,...t}=s;if(e===void 0)return s;let n=zf.get(s)??t;return zf.set(s,n),n}function Pf(s,e){let[t,n]=[Gs(s),Gs(e)],a=Object.keys(t);return a.length===Object.keys(n).length&&a.every(i=>t[i]===n[i])}var xy={add:"to add",own:"yours"},ky=s=>["","common practice"].includes(s),Yl=class extends w({rows:m(u),names:m(u),ticked:m(u)}){static styles=[y,ae,b`
      .plain :is(th, td) { vertical-align: middle; }
      .tick { width: 1px; padding-top: 0 !important; padding-bottom: 0 !important; }
      label { display: grid; place-items: center; min-width: var(--target); min-height: var(--target); }
      input { width: 22px; height: 22px; margin: 0; }
      .pairs {
        display: block; overflow-wrap: anywhere; color: var(--soft); font-weight: 400; font-size: var(--type-small);
      }
      .from { white-space: nowrap; }
      .plain thead .number { white-space: normal; }
      [data-packed] .what { color: var(--soft); }
      @media print {
        label { min-width: 0; min-height: 0; margin-right: 2mm; }
        input { appearance: none; width: 3.4mm; height: 3.4mm; border: 0.4mm solid var(--ink); border-radius: 0; }
        input:checked::after {
          content: '✓'; display: block; line-height: 2.6mm; text-align: center;
        }
        .pairs { display: inline; margin-left: 2mm; }
        [data-packed] .what { color: inherit; }
      }
    `];render(){if(this.rows.length===0)return l`<p>No adapter is needed.</p>`;let e=new Set(this.ticked);return l`<table class="plain">
      <thead><tr><th scope="col"><span class="unseen">Packed</span></th><th scope="col">Adapter, and what
        it joins</th><th scope="col" class="number">How many</th><th scope="col">From</th></tr></thead>
      <tbody>${this.rows.map(t=>this._row(t,e.has(Vl(t))))}</tbody>
    </table>`}_row(e,t){let n=({target:i})=>$(this,"jw-kit-edit",{kind:"tick",key:Vl(e),ticked:i.checked}),a=ky(e.kind)?p:l` <span class="quiet">(${e.kind})</span>`;return l`<tr data-from=${e.from} ?data-packed=${t}><td class="tick"><label><input type="checkbox"
        aria-label="Packed: ${e.what}" .checked=${t} @change=${n}></label></td><th
        scope="row"><span class="what">${e.what}</span>${a}${ce(e.pack)}
        ${e.stated?l`<small class="quiet">${e.stated}</small>`:p}
        <span class="pairs">${e.pairs.map(i=>nt(i,this.names)).join("; ")}</span></th>
      <td class="number">${e.count}</td><td class="from">${xy[e.from]}</td></tr>`}};customElements.define("jw-kit-packing",Yl);var If=({joined:s},e)=>(s?.adapters??[]).filter(t=>Yn(t)===e).length;function Sy(s){let e=new Map;for(let t of s){let n=Yn(t);e.set(n,{...t,count:(e.get(n)?.count??0)+t.count})}return e}function Ji(s,e,t){let n=(d,c)=>De(t,d[`${c}_family`],d[`${c}_gender`]),a=d=>`${n(d,"one")} to ${n(d,"other")}`,i=d=>s.pairs.filter(c=>If(c,d)>0).map(({ports:c})=>c),r=s.adapters.map(d=>({...d,what:d.name,from:"add",pairs:i(Yn(d))})),o=[...Sy(e.owned??[])].map(([d,c])=>{let h=Math.max(0,...s.pairs.map(f=>If(f,d)));return{...c,what:a(c),count:Math.min(c.count,h),from:"own",pairs:i(d),kind:""}});return[...r,...o.filter(({count:d})=>d>0)]}var jy=s=>[["adapter",e=>e.what],["one_family",e=>e.one_family],["one_gender",e=>e.one_gender],["other_family",e=>e.other_family],["other_gender",e=>e.other_gender],["count",e=>e.count],["from",e=>e.from],["joins",e=>e.pairs.map(t=>nt(t,s)).join("; ")],["known_from",e=>e.kind]],Wf=(s,e)=>Rt(jy(e),s);var Jl=class extends w({result:m(u),answered:m(u),names:m(u),ticked:m(u),outdated:{type:String},searching:{type:Boolean}},O){static styles=[y,T,b`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); align-content: start; }
      #headline { display: block; font-size: var(--type-lead); line-height: 1.3; margin-bottom: var(--space-half); }
      #goals { margin: var(--space-2) 0 0; padding: 0; border: 0; min-width: 0; }
      #goals label {
        display: flex; gap: var(--space-3); align-items: center; min-height: var(--target); font-size: var(--type-text);
      }
      #goals input { flex: none; width: 20px; height: 20px; margin: 0; accent-color: var(--accent); }
      .price { color: var(--soft); }
      .outdated {
        padding: var(--space-2) var(--space-3); margin-top: var(--space-2); background: var(--alarm-wash);
        border: 1px solid var(--alarm);
        border-radius: var(--round);
      }
      .longer { display: flex; gap: var(--space-2); align-items: center; margin: var(--space-2) 0; }
      #longer { flex: none; }
      @media print {
        :host { display: block; }
        .panel { margin-bottom: 2mm; }
        #headline { margin-bottom: 0; }
        #goals { margin-top: 0; }
        #goals label { min-height: 0; }
        #goals input { display: none; }
        #goals [data-chosen] { display: none; }
      }
    `];render(){let{answered:e,names:t,result:n}=this,a=Nf(e,n);return l`<section class="panel">
        <div role="status"><p id="verdict"><strong id="headline">${n.headline}</strong>${n.verdict.slice(n.headline.length)}</p></div>
        ${n.added+n.price.added>0?this._goals(n):p}
        ${this._longer(e,n)}
        ${a.length>0?l`<p class="quiet">In no pair: ${a.map(i=>t[i]).join(", ")}.</p>`:p}
        ${this.outdated?l`<p class="outdated" role="alert">${this.outdated}</p>`:p}
      </section>
      <section class="panel" id="packing"><h2>Packing list</h2><jw-kit-packing
        .rows=${Ji(n,e,this.vocabulary.lists.families)} .names=${t}
        .ticked=${this.ticked}></jw-kit-packing></section>`}_goals(e){let t=n=>$(this,"jw-kit-edit",{kind:"limit",changes:{goal:n}});return l`<fieldset id="goals"><legend class="unseen">Aim</legend>${Lf(e).map(({id:n,isChosen:a,words:i,price:r})=>l`<label ?data-chosen=${a}><input type="radio" name="goal" value=${n}
        .checked=${a} @change=${()=>t(n)}><span><b>${i}</b>${r?l` <span class="price">${r}</span>`:p}</span></label>`)}</fieldset>`}_longer({search:e},{optimal:t}){if(t||e==="thorough")return p;let n=this.searching?"looking for a smaller kit, in this browser":"in this browser, two minutes at most";return l`<p class="longer noprint">
      <button id="longer" ?disabled=${this.searching}
        @click=${()=>$(this,"jw-kit-search")}>Search for longer</button>
      <small role="status">${n}</small>
    </p>`}};customElements.define("jw-kit-verdict",Jl);var Bf=(s,e,t)=>s.map((n,a)=>a===e?t:n),Zl=([s,e])=>s<e?[s,e]:[e,s],Hf=([s,e],[t,n])=>s-t||e-n,Ey=s=>Array.from({length:s},(e,t)=>Array.from({length:s-t-1},(n,a)=>[t,t+1+a])).flat(),Xi=({pairs:s,ports:e})=>s??Ey(e.length);function Xl(s,e){let t=s.ports.map((i,r)=>e.flatMap((o,d)=>o===r?[d]:[])),n=e.map(i=>s.ports[i]);if(!s.pairs)return{...s,ports:n};let a=s.pairs.flatMap(([i,r])=>t[i].flatMap(o=>t[r].map(d=>Zl([o,d]))));return{...s,ports:n,pairs:a.sort(Hf)}}var Ql=({ports:s})=>s.map((e,t)=>t),Oy=(s,e)=>s>=0&&s<e.length,Ty={set:(s,{at:e,changes:t})=>({...s,ports:Bf(s.ports,e,pt({...s.ports[e],...t}))}),add:(s,{port:e},{ports:t})=>s.ports.length<t.most?{...s,ports:[...s.ports,e]}:s,duplicate:(s,{at:e},{ports:t})=>s.ports.length<t.most?Xl(s,Ql(s).toSpliced(e+1,0,e)):s,remove:(s,{at:e})=>Xl(s,Ql(s).toSpliced(e,1)),move:(s,{at:e,to:t})=>e!==t&&Oy(t,s.ports)?Xl(s,Ql(s).toSpliced(e,1).toSpliced(t,0,e)):s,pairs:({pairs:s,...e},{pairs:t})=>t?{...e,pairs:t}:e,join:(s,{pair:e,joined:t})=>{let n=Zl(e),a=Xi(s).map(Zl).filter(([i,r])=>i!==n[0]||r!==n[1]);return{...s,pairs:(t?[...a,n]:a).sort(Hf)}},own:(s,{at:e,changes:t})=>({...s,owned:Bf(s.owned,e,{...s.owned[e],...t})}),acquire:(s,{adapter:e},{owned:t})=>(s.owned??[]).length<t.most?{...s,owned:[...s.owned??[],e]}:s,discard:(s,{at:e})=>({...s,owned:s.owned.toSpliced(e,1)}),limit:(s,{changes:e})=>pt({...s,...e}),tick:(s,{key:e,ticked:t})=>{let n=(s.ticked??[]).filter(a=>a!==e);return{...s,ticked:t?[...n,e]:n}},replace:(s,{request:e})=>e},ed=(s,e,t)=>Ty[e.kind](s,e,t);var Ge=(s,e,t,n,a)=>({name:s,family:e,gender:t,highest_frequency_hz:n*1e6,power_w:a}),Jn={ports:[Ge("Transceiver","uhf","jack",54,100),Ge("Tuner","uhf","jack",54,100),Ge("Dipole feed line","uhf","plug",30,100),Ge("Dummy load","n","jack",450,100),Ge("Analyser","sma","jack",450,0),Ge("Handheld","sma","plug",450,5),Ge("Vertical","n","jack",450,50),Ge("Link antenna","rp_sma","plug",2450,0),Ge("Patch lead","bnc","plug",450,50),Ge("Receive loop","f","plug",30,0)],pairs:[[0,1],[0,2],[0,3],[1,2],[2,4],[3,5],[3,8],[4,6],[4,7],[4,8],[4,9],[5,6],[5,8]],owned:[{one_family:"uhf",one_gender:"plug",other_family:"bnc",other_gender:"jack",count:1},{one_family:"n",one_gender:"plug",other_family:"bnc",other_gender:"jack",count:1}]},Uf={ports:[]},Qi=Ge("","n","jack",54,100),Ff={one_family:"n",one_gender:"plug",other_family:"uhf",other_gender:"jack",count:1};var td=class extends w({of:{type:String},what:{type:String}}){static styles=[y,b`
      p {
        display: flex; flex-wrap: wrap; gap: var(--space-1) var(--space-3); align-items: center;
        margin-bottom: var(--space-2);
        padding: var(--space-1) var(--space-1) var(--space-1) var(--space-3);
        background: var(--sunk); border-radius: var(--round); font-size: var(--type-small);
      }
      span { flex: 1 1 12rem; }
      @media print { button { display: none; } }
    `];constructor(){super(),this.of="",this.what=""}render(){return this.what?l`<p role="note"><span>${this.of} has its own: ${this.what}.</span>
      <button @click=${()=>$(this,"jw-leave")}>Use the station’s</button></p>`:p}};customElements.define("jw-own",td);var Ay=["one_family","one_gender","other_family","other_gender","count"],sd=class extends w({owned:m(u),refused:m(u)},O){static styles=[y,b`
      ul { list-style: none; margin: 0; padding: 0; }
      li { padding: var(--space-2) 0; border-bottom: 1px solid var(--line); }
      .fields { display: grid; grid-template-columns: 1fr 1fr; gap: 0 var(--space-3); align-items: end; }
      .fields > button { justify-self: start; margin-bottom: 1.5rem; }
      #acquire { margin-top: var(--space-2); }
    `];render(){let{owned:e,refused:t}=this,{most:n}=this.vocabulary.fields.kit.owned;return l`<ul>${e.map((a,i)=>this._row(a,i,t?.at===i?t:void 0))}</ul>
      <button id="acquire" ?disabled=${e.length>=n}
        @click=${()=>$(this,"jw-kit-edit",{kind:"acquire",adapter:Ff})}>Add an adapter you
        own</button>`}_row(e,t,n){let a=i=>I(this.vocabulary,`owned.${i}`,this.vocabulary.valueOf(e,`owned.${i}`),n?.field===i?n.message:"");return l`<li><div class="fields" role="group" aria-label="Adapter ${t+1}"
      @jw-change=${i=>this._changed(i,t)}>
      ${Ay.map(a)}
      <button aria-label="Remove adapter ${t+1}" @click=${()=>this._discard(t)}>Remove</button>
    </div></li>`}_changed(e,t){e.stopPropagation(),e.detail.live||$(this,"jw-kit-edit",{kind:"own",at:t,changes:D(e)})}async _discard(e){$(this,"jw-kit-edit",{kind:"discard",at:e}),await Promise.resolve(),await this.updateComplete;let t=this.renderRoot.querySelectorAll("li button");(t[Math.min(e,t.length-1)]??N(this.renderRoot,"#acquire")).focus()}};customElements.define("jw-kit-owned",sd);var My=150,qy=44,nd=class extends w({request:m(u),names:m(u),refused:m(u)}){static styles=[y,b`
      .every {
        display: flex; gap: var(--space-3); align-items: center; min-height: var(--target); font-weight: 600;
        font-size: var(--type-text);
      }
      input { width: 22px; height: 22px; margin: 0; }
      .box { display: grid; place-items: center; min-width: var(--target); min-height: var(--target); }
      table { border-collapse: collapse; font-size: var(--type-small); }
      td { padding: 0; border: 1px solid var(--line); }
      th { font-weight: 600; padding: 0 var(--space-2) 0 0; text-align: left; }
      thead th { padding: var(--space-1) 0; vertical-align: bottom; }
      thead span {
        display: block; margin: 0 auto; writing-mode: vertical-rl; rotate: 180deg; max-height: 120px; overflow: hidden;
        text-overflow: ellipsis; white-space: nowrap; line-height: 1.2;
      }
      tbody th { max-width: 130px; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; }
      .empty { border: 0; }
      td:has(:checked) { background: var(--accent-wash); }
      fieldset {
        margin: 0 0 var(--space-2); padding: 0 0 var(--space-1); border: 0; border-bottom: 1px solid var(--line);
        min-width: 0;
      }
      legend { font-size: var(--type-small); font-weight: 600; padding: 0; }
      fieldset div {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(118px, 1fr)); gap: 0 var(--space-2);
      }
      fieldset label {
        display: flex; gap: var(--space-2); align-items: center; min-height: var(--target);
        font-size: var(--type-small);
        overflow-wrap: anywhere;
      }
      .acts { display: flex; gap: var(--space-2); margin-top: var(--space-2); }
    `];constructor(){super(),this._width=new Ds(this,0)}render(){let{names:e,request:t,refused:n}=this,a=!t.pairs,i=new Set(Xi(t).map(([o,d])=>`${Math.min(o,d)}-${Math.max(o,d)}`)),r=this._width.pixels>=My+qy*(e.length-1);return l`<label class="every"><input id="every" type="checkbox" .checked=${a}
      aria-invalid=${n?"true":"false"}
        @change=${({target:o})=>this._pairs(o.checked?void 0:Xi(t))}> Every two ports</label>
      ${n?l`<p class="error" role="alert">${n.message}</p>`:p}
      ${a?p:r?this._matrix(i):this._list(i)}
      ${a?p:l`<div class="acts"><button id="none" ?disabled=${i.size===0}
            @click=${()=>this._pairs([])}>Untick all</button></div>`}`}_matrix(e){let{names:t}=this,n=t.map((a,i)=>i).slice(1);return l`<table>
      <caption class="unseen">Which ports must join</caption>
      <thead><tr><td class="empty"></td>${n.map(a=>l`<th scope="col" title=${t[a]}><span>${t[a]}</span></th>`)}</tr></thead>
      <tbody>${t.slice(0,-1).map((a,i)=>l`<tr><th scope="row" title=${a}>${a}</th>
          ${n.map(r=>r>i?l`<td><label class="box">${this._box(i,r,e)}</label></td>`:l`<td class="empty"></td>`)}</tr>`)}</tbody>
    </table>`}_list(e){let{names:t}=this;return t.slice(0,-1).map((n,a)=>l`<fieldset><legend>${n} joins</legend><div>
        ${t.map((i,r)=>r>a?l`<label>${this._box(a,r,e)} ${i}</label>`:p)}
      </div></fieldset>`)}_box(e,t,n){let a=`${e}-${t}`;return l`<input type="checkbox" data-pair=${a} aria-label=${nt([e,t],this.names)}
      .checked=${n.has(a)}
      @change=${({target:i})=>$(this,"jw-kit-edit",{kind:"join",pair:[e,t],joined:i.checked})}>`}_pairs(e){$(this,"jw-kit-edit",{kind:"pairs",pairs:e})}};customElements.define("jw-kit-pairs",nd);var Cy=["name","family","gender","highest_frequency_hz","power_w","impedance_ohm"],ad=class extends w({port:m(u),name:{type:String},at:{type:Number},count:{type:Number},most:{type:Number},open:{type:Boolean},refused:m(u)},O){static styles=[y,b`
      article { background: var(--card); border: 1px solid var(--line); border-radius: var(--round); }
      #toggle {
        display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: 0 var(--space-2); align-items: center;
        width: 100%; min-height: 48px; padding: var(--space-1) var(--space-3);
      }
      .name { display: block; font-weight: 600; overflow-wrap: anywhere; }
      .sub, .end { color: var(--soft); font-size: var(--type-small); line-height: 1.25; }
      .sub { display: block; }
      .end { white-space: nowrap; }
      .fields {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: var(--space-1) var(--space-3);
        align-items: end;
        padding: var(--space-2) var(--space-3) var(--space-half); background: var(--sunk);
      }
      .acts {
        display: flex; flex-wrap: wrap; gap: var(--space-2); padding: var(--space-1) var(--space-3) var(--space-3);
        background: var(--sunk);
        border-radius: 0 0 var(--round) var(--round);
      }
    `];render(){let{at:e,name:t,port:n,refused:a}=this;return l`<article aria-label=${t}>
      <button id="toggle" class="head" aria-expanded=${this.open} @click=${()=>$(this,"jw-kit-toggle",{at:e})}>
        <span><span class="name">${t}</span>
          <span class="sub">${a?l`<span class="error">needs a correction</span>`:Yi(n)}</span></span>
        <span class="end">${De(this.vocabulary.lists.families,n.family,n.gender)}</span>
      </button>
      ${this.open?this._form():p}
    </article>`}_form(){let{at:e,count:t}=this,n=(a,i,r,o)=>l`<button id=${a} ?disabled=${r}
        @click=${()=>$(this,"jw-kit-edit",{at:e,...o})}>${i}</button>`;return l`<div class="fields" @jw-change=${this._changed}>
        ${Cy.map(a=>this._field(a))}
      </div>
      <div class="acts">
        ${n("up","Up",e===0,{kind:"move",to:e-1})}
        ${n("down","Down",e===t-1,{kind:"move",to:e+1})}
        ${n("duplicate","Duplicate",t>=this.most,{kind:"duplicate"})}
        ${n("remove","Remove",!1,{kind:"remove"})}
      </div>`}_field(e){let{port:t,refused:n}=this,a=`port.${e}`,i=n?.field===e?n.message:"";return I(this.vocabulary,a,this.vocabulary.valueOf(t,a),i)}get focused(){return this.shadowRoot?.activeElement?.id??""}focusOn(e){let t=e!==""&&this.renderRoot.querySelector(`#${e}:not(:disabled)`)!==null;N(this.renderRoot,t?`#${e}`:"#toggle").focus()}_changed(e){e.stopPropagation(),e.detail.live||$(this,"jw-kit-edit",{kind:"set",at:this.at,changes:D(e)})}};customElements.define("jw-kit-port",ad);var Df={plug:"plug",male:"plug",jack:"jack",socket:"jack",female:"jack"},Ry=["rx","receive"],Ny=/^(?:[kMG]?Hz|[mk]?W|watts?)$/i,Ly=1e6,zy=4,Py=/ \(pack .*\)$/,Iy="as SO-239, PL-259, N jack or SMA plug",Xn=s=>s.toLowerCase().replace(/ohms?/g,"ω").replaceAll("Ω","ω").replace(/[^\p{L}\p{N}]/gu,"");function Wy({id:s,name:e,also_called:t}){return[e.replace(Py,""),...t].flatMap(n=>{let a=n.split(" / ").map(Xn);return a.map((i,r)=>({key:i,family:s,gender:a.length>1?["plug","jack"][r]:void 0}))})}function By(s,e){let t=new Map(e.flatMap(Wy).map(n=>[n.key,n]));return s.flatMap((n,a)=>Array.from({length:Math.min(zy,s.length-a)},(i,r)=>a+r+1).flatMap(i=>{let r=t.get(Xn(s.slice(a,i).join("")));if(!r)return[];if(r.gender)return[{...r,from:a,to:i}];let o=Df[Xn(s[i]??"")],d=Df[Xn(s[a-1]??"")];return o?[{...r,gender:o,from:a,to:i+1}]:[{...r,gender:d,from:d?a-1:a,to:i}]}))}var Hy=s=>s.toSorted((e,t)=>+(t.gender!==void 0)-+(e.gender!==void 0)||t.to-t.from-e.to+e.from)[0];function Uy(s){return s.reduce((e,t)=>Ny.test(t)&&/^[\d.,]+$/.test(e.at(-1)??"")?[...e.slice(0,-1),`${e.at(-1)}${t}`]:[...e,t],[])}function Gf(s,e,t,n,{min:a,max:i}){let r=is(e,t);if(r.length>1)return{problem:ui(s,e,r)};let o=r[0]?.value*n;return o>=a&&o<=i?{value:o}:{problem:ci(s,e,`${a/n} to ${i/n} ${t}`,t)}}var Fy=s=>/[wk]$|watts?$/i.test(s)&&is(s,"W").length>0,Dy=s=>/[a-z]$/i.test(s)&&is(s,"MHz").length>0;function Kf(s,e,t,n){let a=Uy(s.split(/[\s,;]+(?!\d)|\s+/).filter(Boolean)),i=Hy(By(a,e));if(!i)return{problem:`No connector in “${s.trim()}”; name one, ${Iy}.`};let{family:r,gender:o,from:d,to:c}=i;if(!o)return{problem:`“${a.slice(d,c).join(" ")}”: plug or jack?`};let h=a.slice(0,d),f={family:r,gender:o,highest_frequency_hz:n.highest_frequency_hz,power_w:n.power_w},_=new Set;for(let g of a.slice(c)){let v=/^[\d.,]+$/.test(g),k;if(Ry.includes(Xn(g)))k={field:"power_w",value:0};else if(Fy(g)||v&&_.has("highest_frequency_hz"))k={field:"power_w",...Gf("Power",g,"W",1,t.power_w)};else if(Dy(g)||v)k={field:"highest_frequency_hz",...Gf("Used up to",g,"MHz",Ly,t.highest_frequency_hz)};else{if(/\d/.test(g))return{problem:`“${g}” after the connector: give the highest frequency in MHz, and the power in W.`};h.push(g);continue}if(k.problem)return{problem:k.problem};if(_.has(k.field))return{problem:`“${g}”: there is one frequency and one power before it already.`};_.add(k.field),f[k.field]=k.value}return{port:{name:h.join(" "),...f}}}var id=class extends w({ports:m(u),full:{type:Boolean},_text:x(u),_problem:x(u)},O){static styles=[y,b`
      :host { margin-top: var(--space-3); }
      form { display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: var(--space-2); }
      label { grid-column: 1 / -1; font-size: var(--type-small); font-weight: 600; }
      p { min-height: 1.4em; margin: var(--space-half) 0 var(--space-1); }
    `];constructor(){super(),this._text=this._problem=""}render(){return l`<form @submit=${this._add}>
        <label for="typed">Type a port and press Enter</label>
        <input id="typed" autocomplete="off" autocapitalize="off" spellcheck="false" enterkeyhint="done" maxlength="160"
          placeholder="Handheld SMA plug 450 MHz 5 W" aria-describedby="read"
          aria-invalid=${this._problem?"true":"false"} ?disabled=${this.full} .value=${this._text}
          @input=${this._typed}>
        <button ?disabled=${this.full}>Add</button>
      </form>
      <p id="read" class=${this._problem?"error":"quiet"} role="status">${this._problem||this._reading}</p>`}get _reading(){if(this._text.trim()==="")return"Name, connector, highest MHz, watts (0 or “rx” for receive only); left out, as in the port before.";let{port:e}=this._read;if(!e)return"…";let t=De(this.vocabulary.lists.families,e.family,e.gender);return`${[e.name,t].filter(Boolean).join(": ")}, ${Yi(e)}`}get _read(){let{fields:e,lists:t}=this.vocabulary,n=e.port;return Kf(this._text,t.families,n,this.ports.at(-1)??Qi)}_typed({target:e}){this._text=e.value,this._problem=""}_add(e){e.preventDefault();let{port:t,problem:n}=this._read;if(!t){this._problem=n??"";return}this._text="",$(this,"jw-kit-edit",{kind:"add",port:t}),N(this.renderRoot,"#typed").focus()}};customElements.define("jw-kit-typed",id);var rd=class extends w({ports:m(u),names:m(u),refused:m(u),_open:x(u)},O){static styles=[y,b`
      ol { list-style: none; margin: 0; padding: 0; display: grid; gap: var(--space-2); }
      #add { margin-top: var(--space-2); font-size: var(--type-small); }
    `];constructor(){super(),this._open=-1}willUpdate(e){let{refused:t}=this,n=t?.message===e.get("refused")?.message;e.has("refused")&&t&&!n&&(this._open=t.at??-1)}render(){let{names:e,ports:t,refused:n}=this,{most:a}=this.vocabulary.fields.kit.ports;return l`<ol @jw-kit-toggle=${this._toggled} @jw-kit-edit=${this._edited} @keydown=${this._key}>
        ${t.map((i,r)=>l`<li><jw-kit-port .port=${i} .name=${e[r]} .at=${r} .count=${t.length} .most=${a}
            .open=${r===this._open}
            .refused=${n?.at===r?n:void 0}></jw-kit-port></li>`)}
      </ol>
      <jw-kit-typed .ports=${t} ?full=${t.length>=a}></jw-kit-typed>
      <button id="add" ?disabled=${t.length>=a} @click=${this._add}>Add a port by its fields</button>`}_toggled({detail:{at:e}}){this._open=this._open===e?-1:e}async _edited({detail:e,target:t}){let{at:n,kind:a}=e,i={move:e.to,duplicate:n+1,remove:Math.max(n-1,0)}[a];if(i===void 0)return;let{focused:r}=t;this._open===n&&(this._open=a==="remove"?-1:i),await this._focus(i,a==="remove"?"toggle":r)}async _focus(e,t){await Promise.resolve(),await this.updateComplete;let a=this.renderRoot.querySelectorAll("jw-kit-port")[e];await a?.updateComplete,a?.focusOn(t)}_key(e){let t={ArrowUp:-1,ArrowDown:1}[e.key],n=e.target.closest("jw-kit-port");if(!e.altKey||t===void 0||!n)return;e.preventDefault();let a=n.at+t;a>=0&&a<this.ports.length&&$(n,"jw-kit-edit",{kind:"move",at:n.at,to:a})}_add(){this._open=this.ports.length,$(this,"jw-kit-edit",{kind:"add",port:Qi})}};customElements.define("jw-kit-ports",rd);var Gy=["most_in_series","most_loss_db","mode","vswr","return_loss_asked_db","impedance_steps"],od=["exposure","added_sealing","vibration","matings_per_year","service_life_years","condition","added_resistance_ohm","ambient_temperature_c","solar_irradiance_w_per_m2","altitude_m","cable","system_impedance_ohm","transmit_share","on_time_s","off_time_s","power_is","region"],ld=class extends w({request:m(u),own:m(u),names:m(u),refused:m(u),_site:x(u)},O){static styles=[y,T,ne,b`:host { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); align-content: start; }
    details { border: 0; }
    .ports { padding: var(--space-3) var(--space-2); }
    .ports h2 { padding-left: var(--space-2); }`];willUpdate(e){e.has("refused")&&this.refused?.group==="limits"&&od.includes(this.refused.field)&&(this._site=!0)}render(){let{names:e,request:t}=this,n=i=>this.refused?.group===i?this.refused:void 0,a=od.filter(i=>i in t).length;return l`<section class="panel ports"><h2>Ports <small>of your gear, and the ends of its leads</small></h2>
        <jw-kit-ports .ports=${t.ports} .names=${e} .refused=${n("ports")}></jw-kit-ports></section>
      <section class="panel"><h2>Which must join <small>one pair at a time</small></h2>
        <jw-kit-pairs .request=${t} .names=${e} .refused=${n("pairs")}></jw-kit-pairs></section>
      <section class="panel"><h2>Adapters you own</h2>
        <jw-kit-owned .owned=${t.owned??[]} .refused=${n("owned")}></jw-kit-owned></section>
      <section class="panel"><h2>Limits</h2>
        <jw-own of="This kit" what=${this.own.map(i=>this.vocabulary.labelOf(`kit.${i}`)).join(", ")}
          @jw-leave=${()=>$(this,"jw-kit-edit",{kind:"leave",names:this.own})}></jw-own>
        <div class="fields" @jw-change=${this._changed}>${Gy.map(i=>this._field(i))}</div>
        <details ?open=${this._site} @toggle=${({target:i})=>this._site=i.open}>
          <summary>More about station and site${a>0?` (${a} set)`:""}</summary>
          ${this._site?l`<div class="fields" @jw-change=${this._changed}>${od.map(i=>this._field(i))}</div>`:p}
        </details></section>`}_field(e){let{refused:t,request:n}=this,a=t?.group==="limits"&&t.field===e?t.message:"";return I(this.vocabulary,`kit.${e}`,this.vocabulary.valueOf(n,`kit.${e}`),a)}_changed(e){e.stopPropagation(),e.detail.live||$(this,"jw-kit-edit",{kind:"limit",changes:D(e)})}};customElements.define("jw-kit-form",ld);function Ky(s,e,t){X(s,e,2,2,"ports").find(i=>!Number.isInteger(i)||i<0||i>=t)!==void 0&&P(s,e,`numbers of ports, 0 to ${t-1}`)}var Vy=400,Yy=200,Zi="cable_dielectric";function er(s,e){let{ports:t,owned:n,pairs:a,...i}=e.kit,{[Zi]:r,...o}=U("kit",s);return X("ports",o.ports,0,t.most,"ports").forEach((d,c)=>{ie(`ports[${c}]`,U(`ports[${c}]`,d),e.port)}),o.owned!==void 0&&X("owned",o.owned,n.least,n.most,"adapters").forEach((d,c)=>{ie(`owned[${c}]`,U(`owned[${c}]`,d),e.owned)}),o.pairs!==void 0&&X("pairs",o.pairs,a.least,a.most,"pairs").forEach((d,c)=>Ky(`pairs[${c}]`,d,o.ports.length)),o.ticked!==void 0&&X("ticked",o.ticked,0,Vy,"rows").forEach((d,c)=>Q(`ticked[${c}]`,d,Yy)),ie("",o,i,["ports","owned","pairs","ticked"]),o}var Jy={key:"jointwise-kit",blocked:"This browser keeps nothing for the page: your kit ends when it is closed. Copy its link to keep it.",full:"This browser has no room for your kit: the latest changes are not kept. Copy its link to keep it.",spoilt:"The kit kept in this browser could not be read and was set aside. Save it as a file to look for what is left."},Ks=new oe(Jy,er);var Jf=["name","family","gender","highest_frequency_hz","power_w","impedance_ohm"],Xf=["one_family","one_gender","other_family","other_gender","count"],Vf=(s,e)=>{let t=s.map(n=>e[n]??null);return t.slice(0,t.findLastIndex(n=>n!==null)+1)},Yf=(s,e)=>Object.fromEntries(s.map((t,n)=>[t,e[n]??null]).filter(([,t])=>t!==null)),Xy=({ports:s,owned:e,ticked:t,...n})=>({...n,ports:s.map(a=>Vf(Jf,a)),...e?.length>0&&{owned:e.map(a=>Vf(Xf,a))}}),Qy=({ports:s,owned:e,...t})=>({...t,ports:s.map(n=>Yf(Jf,n)),...e&&{owned:e.map(n=>Yf(Xf,n))}}),Qn=s=>za("view=kit","kit",Xy(s));function Qf(s,e){let{document:t,problem:n}=Pa(s,{key:"kit",names:["view"],unfolded:Qy,read:i=>({request:er(i,e),isOfThePast:Zi in i}),what:"kit",instead:"Your own is shown instead."}),a=t?.isOfThePast?Na([Zi]):"";return{request:t?.request,problem:[n,a].filter(Boolean).join(" ")}}function Zy(s){let e=s?.field??"",t=/^(ports|owned)\[(\d+)\](?:\.(\w+))?/.exec(e);return t?{group:t[1],at:Number(t[2]),field:t[3]??""}:/^pairs\b/.test(e)?{group:"pairs",field:""}:{group:e===""?"":"limits",field:e}}var Zf=s=>s&&{...Zy(s),message:s.message};var e3="This kit is too long for a link; the browser keeps it, and the packing list can be saved as CSV.",Zn=class extends w({_said:x(u)},Ot){static view="kit";static ownNames=["kit"];static styles=[y,Qe,b`
      @media screen and (max-width: 1179px) {
        .answer { display: contents; }
        jw-kit-verdict, .waiting { order: -1; }
        .trouble { order: -2; }
      }
      @media (min-width: 1180px) { main { grid-template-columns: minmax(400px, 32%) minmax(0, 1fr); } }
      @media print {
        .answer { display: block; }
        .onpaper { display: block; margin-bottom: 2mm; }
        h2.onpaper { font-size: var(--type-title); }
      }
    `];constructor(){super(),this._said="",this._told="",this._isNew=!0,this._kit=this._enquiry("kit"),this._document=u,this._request=this._settled=u}_begin(){this._document=new ve(Ks,V,this.vocabulary.fields,this._firstKit),this._document.attach(this,e=>{this.stationStore.change(this._name,{},{before:e,after:this._own}),this._notice({text:"The kit was changed in another tab; Undo brings back the one that was here."}),this._settle()}),this._request=this._settled=this._wholeKit}get _own(){return this._document.present}set _own(e){this._document.put(e)}get _firstKit(){let{gear:e}=this.station;return e.length>=this._least?{ports:e}:Jn}get _least(){return this.vocabulary.fields.kit.ports.least}_fromGear(){let{owned:e}=this._own;this._edit({kind:"replace",request:{ports:this.station.gear,...e&&{owned:e}}})}get _wholeKit(){let e=[this._own,this.station],t=this._parts;return(!t||e.some((n,a)=>n!==t[a]))&&(this._parts=e,this._whole=Vi(this._own,this.station,this.vocabulary)),this._whole}render(){let{answered:e,error:t,result:n}=this._kit,a=this._wholeKit,i=Fs(this.vocabulary.lists.families,a.ports),r=Zf(t);return l`${this._progress(this._kit)}
      <main @jw-kit-edit=${({detail:o})=>this._edit(o)} @jw-kit-search=${this._search}>
        ${this._bar()}
        ${r?.group===""?l`<p class="trouble" role="alert">${r.message} <button
              @click=${()=>this._ask(!0)}>Try again</button></p>`:p}
        <jw-kit-form class="noprint" .request=${a} .own=${xf(this._own,this.station,this.vocabulary)}
          .names=${i} .refused=${r}></jw-kit-form>
        ${n?this._answer(n,e,r):l`<p class="waiting ${this._lacksPorts?"empty":""} ${r?"error":"quiet"}">
                ${r?.message??this._waitingWords}</p>`}
      </main>
      <p class="unseen" role="status">${this._said}</p>`}_answer(e,t,n){let a=Fs(this.vocabulary.lists.families,t.ports),i=n?`Out of date: this is the answer before the last change. ${n.message}`:"";return l`<div class="answer">
      <h2 class="onpaper">Adapters to carry</h2>
      <p class="onpaper">${this._limits(t)}</p>
      <jw-kit-verdict .result=${e} .answered=${t} .names=${a} .outdated=${i}
        .ticked=${this._document.present.ticked??[]}
        .searching=${this._isSearching}></jw-kit-verdict>
      <jw-kit-answer .result=${e} .answered=${t} .names=${a}></jw-kit-answer>
    </div>`}get ways(){let[e,t]=super.ways,{answered:n,result:a}=this._kit,i=()=>this._withAnswer(a,()=>this._saveCsv(a,n));return[{...e,run:()=>this._copy()},{id:"csv",words:"Save as CSV",run:i},t]}_saveCsv(e,t){let{families:n}=this.vocabulary.lists,a=Wf(Ji(e,t,n),Fs(n,t.ports));K("jointwise-packing-list.csv","text/csv",a)}_bar(){return l`<div class="bar" role="group" aria-label="Kit">
      <button @click=${()=>this._edit({kind:"replace",request:Jn})}>Example</button>
      <button id="empty" @click=${()=>this._edit({kind:"replace",request:Uf})}>Start empty</button>
      ${this.station.gear.length>0?l`<button id="gear" @click=${this._fromGear}>From the station’s gear</button>`:p}
    </div>`}_limits({ports:e,pairs:t,owned:n,...a}){let i=this.vocabulary.first.kit,r={most_in_series:i.most_in_series,most_loss_db:i.most_loss_db,...a},o=Object.entries(r).map(([d,c])=>`${this.vocabulary.labelOf(`kit.${d}`)}: ${this.vocabulary.spoken(`kit.${d}`,c)}`);return[`${e.length} ports`,...o].join(" · ")}get _lacksPorts(){return this._request.ports.length<this._least}get _waitingWords(){return this._lacksPorts?"Type the ports of your gear; from the second on the answer stands here.":"Calculating…"}get _isSearching(){return this._kit.status==="pending"&&this._asked?.search==="thorough"}_ask(e=!1){let t=Gs(this._request);if(this._lacksPorts){this._asked=void 0,this._kit.status!=="initial"&&this._kit.forget();return}let n=this._asked===void 0&&t===this._kit.answered;(e||t!==this._asked&&!n)&&this._kit.askNext(t),this._asked=t}_search(){this._request={...this._wholeKit,search:"thorough"},this.requestUpdate()}_edit(e){let{own:t,changes:n}=this._parted(e);t===this._own&&!n||(this._put(t,n,{isEntry:!1}),this._said=e.kind==="move"?`Moved to place ${e.to+1}.`:"",this._settle())}_parted(e){let{fields:t}=this.vocabulary,n=r=>Object.hasOwn(t.settings,r);if(e.kind==="leave")return{own:kf(this._own,e.names)};if(e.kind!=="limit"||!Object.keys(e.changes).some(n))return{own:ed(this._own,e,t.kit)};let a=Object.keys(e.changes).filter(r=>r in this._own),i=Object.fromEntries(a.map(r=>[r,null]));return{own:a.length>0?ed(this._own,{kind:"limit",changes:i},t.kit):this._own,changes:{settings:this._settings(e.changes)}}}turn(e){let t=super.turn(e);return t&&(this._said=e==="undo"?"Undone.":"Done again."),this._settle(),t}_stationChanged(e){super._stationChanged(e),this._begun&&this._settle()}_settle(){Pf(this._wholeKit,this._settled)||(this._isSearching&&this._kit.cancel(),this._request=this._settled=this._wholeKit),this._address(!0),this._tellTrouble(),this.requestUpdate()}get _fragment(){return Qn(this._own).fragment}_restore(e,t){let{request:n,problem:a}=Qf(e,this.vocabulary.fields),i=t&&(!this._isNew||this._document.wasKept),r=n&&!i?this._take(n):"";return this._isNew=!1,this._settle(),{text:[a,r].filter(Boolean).join(" ")}}_take(e){return Qn(e).fragment===Qn(this._own).fragment?"":(this._put(e),"The kit of this link is shown; Undo brings back the one before.")}_tellTrouble(){let{problem:e,spoilt:t}=this._document;if(e===this._told)return;this._told=e;let n=t&&{words:"Save it",run:()=>K("jointwise-kit-unread.txt","text/plain",t)};this._notice(e&&{text:e,action:n})}async _copy(){let{whole:e}=Qn(this._own);e?await this._copyLink():this._notice({text:e3})}};customElements.define("jw-kit-view",Zn);var dd={plug:"plug (has the nut)",jack:"jack"},e0=({families:s})=>({"port.name":{label:"What it is"},"port.family":{label:"Connector",entries:je(s)},"port.gender":{label:"Plug or jack",options:dd},"port.highest_frequency_hz":{label:"Used up to",factor:1e6,unit:"MHz"},"port.power_w":{label:"Power, peak envelope"},"port.impedance_ohm":{label:"Impedance, UHF types only"},"owned.one_family":{label:"One end",entries:je(s)},"owned.one_gender":{label:"Plug or jack",options:dd},"owned.other_family":{label:"Other end",entries:je(s)},"owned.other_gender":{label:"Plug or jack",options:dd},"owned.count":{label:"How many"},"kit.most_in_series":{label:"Most adapters in series"},"kit.most_loss_db":{label:"Most loss of a pair"},"kit.impedance_steps":{label:"50 Ω may meet 75 Ω"},"kit.goal":{label:"Aim",options:{fewest:"fewest adapters",best_joints:"best joints"}},"kit.search":{label:"Search",options:{quick:"quick",thorough:"for a minute"}}});var t0={id:Zn.view,label:"Kit",description:"Which adapters to carry so that everything you have can be joined.",fields:$f,words:e0,upright:!0,element:({transport:s,stage:e})=>l`<jw-kit-view class="view" .transport=${s} .stage=${e}></jw-kit-view>`};var t3={arrester:"Arrester",switch:"Switch",meter:"Meter",attenuator:"Attenuator",filter:"Filter",divider:"Divider"},ea=(s,e)=>s.find(t=>t.id===e)?.name??e;function s3(s,{cables:e,families:t,wire_lines:n}){if(s.name)return s.name;switch(s.kind){case"cable":return`${Te(s.length_m)} of ${ea(e,s.cable)}`;case"joint":return s.adapter_to?`${ea(t,s.family)} to ${ea(t,s.adapter_to)}`:ea(t,s.family);case"wires":return`${Te(s.length_m)} of ${ea(n,s.line)}`;case"tuner":return"Tuner";case"transformer":return"Transformer";case"section":return`${Te(s.length_m)} section of ${j(s.impedance_ohm)} Ω`;case"measured":return"Measured part"}return t3[s.what]??"Part"}var s0=({elements:s},e)=>s.map(t=>s3(t,e));var n0={...Ps,rating:"Rated power"},a0=s=>n0[s],hs=s=>n0[s].toLowerCase();function i0(s,e,t){return s?s.elements[t]===e?t:s.elements.indexOf(e):-1}var cd=(s,e)=>s.parts.filter(t=>t.element===e),Vs=({element:s,kind:e,name:t})=>e==="load"?t:`${s+1}. ${t}`,Pe=s=>s===null?"–":j(s,3),r0=([s,e])=>`reads SWR ${Pe(s)} to ${Pe(e)}`;function n3(s){return s.tuner?s.tuner.reachable?"matched":"can’t match this":s.reads_vswr?r0(s.reads_vswr):""}var a3=s=>s[0].toLowerCase()+s.slice(1),i3=({henry:s,farad:e})=>s===null?B(e??0,"F",3):B(s,"H",3);function ta(s){if(s.tuner){let e=s.tuner.parts.map(i3).join(", ");return[`${s.name}: ${a3(s.tuner.sentence)}${e?` Set to ${e}, from the transmitter on.`:""}`]}return s.reads_vswr?[`The meter ${r0(s.reads_vswr)}, by how good its bridge is.`]:[]}var r3=(s,e)=>s.filter(t=>t[e]!==null).sort((t,n)=>t[e]-n[e])[0];function o0(s,e){let t=cd(s,e),n=t.find(r=>r.refused_by),a=r3(t,"margin_db"),i=t.map(r=>r.loss_db).filter(r=>r!==null);return{margin:n?null:a?.margin_db??null,loss:i.length<t.length?null:i.reduce((r,o)=>r+o,0),refusal:n?.refusal??"",limited:n||!a?"":hs(a.binding),undecided:t.some(r=>r.undecided),brief:t.map(n3).find(Boolean)??"",says:t.flatMap(ta),marks:[...new Set(t.flatMap(r=>r.marks))],weakest:s.weakest!==null&&t.includes(s.parts[s.weakest])}}var Ys=s=>s.refused_by?"refused":s.margin_db===null?"–":`${A(s.margin_db)} dB`;function l0(s,e){let t=s.refused_by?`refused: ${s.refusal}`:s.margin_db===null||s.binding===null?"no margin":`margin ${A(s.margin_db)} dB, limited by ${hs(s.binding)}`,n=e?", the weakest part":"";return s.kind==="load"?`${s.name}: ${t}${n}`:`${s.name}: ${t}, loses ${W(s.loss_db)}${n}. Open its derivation`}function d0({bands:[s]}){let[e,,,,t]=s.vswr,n=a=>a===null?"without bound":j(a,3);return`On ${s.column.name} the SWR at the transmitter is ${n(e)} to ${n(t)} in nine of ten; by the root of the sum of squares ${n(s.likely_vswr)}, at the worst ${n(s.worst_vswr)}.`}var Js="Likely",zt="At worst",ps=s=>s===null?"–":B(s,"W",3);function tr({resistance_ohm:s,reactance_ohm:e}){return s===null||e===null?"":`${j(s,3)} ${e<0?"−":"+"} j ${j(Math.abs(e),3)} Ω`}var sa=(s,e)=>s===null||e===null?null:Math.max(s,e),o3=(s,e)=>sa(s.vswr,e.vswr)===s.vswr?s:e;function ms(s){let{input:e}=s,t=o3(s.input_cautious,e),n=[tr(e),tr(t)];return[...s.power_w>0?[{id:"delivered",term:"At the antenna",likely:ps(s.delivered_w),worst:ps(s.delivered_low_w)}]:[],{id:"loss",term:"Loss of the line",likely:W(s.loss_db),worst:W(s.loss_high_db)},{id:"swr",term:"SWR at the transmitter",likely:Pe(e.vswr),worst:Pe(t.vswr)},...n.some(Boolean)?[{id:"impedance",term:"Impedance there",likely:n[0],worst:n[1]}]:[]]}var c0=({likely:s,worst:e})=>s===e?s:`${s}, at worst ${e}`;var l3={start:66,joint:62,end:84},d3=86,ud=["cable","wires","section"],u0={least:76,perRootMetre:17},c3=3,u3=6.4;function h3({kind:s,length_m:e},t){return ud.includes(s)?{width:Math.min(u0.least,t),more:u0.perRootMetre*Math.sqrt(e)}:{width:Math.min(l3[s]??d3,t),more:0}}function p3(s,e){let t=[],n=0;for(let a of s){let i=h3(a,e);(t.length===0||i.width>n)&&(t.push([]),n=e),t.at(-1).push({...a,...i}),n-=i.width}return t}function m3(s,e,t){let n=o=>s.reduce((d,c)=>d+c[o],0),a=n("more");if(a===0)return s;let i=(e-n("width"))/a,r=t?Math.min(i,c3):i;return s.map(o=>({...o,width:o.width+r*o.more}))}function h0(s,e){let t=p3(s,e);return{items:t.flatMap((a,i)=>{let r=0;return m3(a,e,i===t.length-1).map(o=>{let d={...o,x:r,y:i*128,row:i};return r+=o.width,d})}),rows:t.length,height:t.length*128}}function p0(s,e){let t=Math.max(Math.floor(e/u3),4),n=i=>i.length>t?`${i.slice(0,t-1)}…`:i;if(s.length<=t)return[s];let a=s.lastIndexOf(" ",t);return a<=0?[n(s)]:[s.slice(0,a),n(s.slice(a+1))]}var f3=720,f0={measured:"m-12 6l6 -10l6 7l6 -9l6 6",transformer:"m-5 -9q9 3 0 6q9 3 0 6q9 3 0 6m10 -18q-9 3 0 6q-9 3 0 6q-9 3 0 6",tuner:"m-14 0h6q2 -8 4 0q2 -8 4 0q2 -8 4 0h10m-4 0v9",load:"m-12 0h3l2 -6l4 12l4 -12l4 12l2 -6h5"},g0=56,hd=class extends w({result:m(u),elements:m(u),open:{type:String},_width:x(u)}){static styles=[y,b`
      svg { display: block; width: 100%; height: auto; overflow: visible; }
      text { fill: var(--ink); font-size: var(--type-fine); text-anchor: middle; }
      .name { font-size: var(--type-fine); }
      .soft { fill: var(--soft); font-size: var(--type-fine); letter-spacing: -0.03em; }
      .margin { font-weight: 700; font-size: var(--type-fine); }
      .wire { fill: none; stroke: var(--edge); stroke-width: 2.5; }
      .turn { stroke-dasharray: 2 4; stroke-width: 2; }
      .body { stroke: var(--ink); stroke-width: 1.2; }
      .own { fill: var(--card); stroke: var(--ink); stroke-width: 1.5; }
      .hit { fill: transparent; rx: 8px; }
      .part { cursor: pointer; outline: none; }
      .part:hover .hit { fill: color-mix(in srgb, var(--ink) 8%, transparent); }
      .part:focus-visible .hit { stroke: var(--focus); stroke-width: 3; }
      .part[data-open] .hit { fill: var(--accent-wash); }
      .weakest { fill: none; stroke: var(--ink); stroke-width: 3; }
      .weak { font-weight: 700; font-size: var(--type-fine); }
      .refused { fill: var(--refused); }
    `];constructor(){super(),this._width=f3,this._sizes=new ResizeObserver(([{contentRect:e}])=>{e.width>0&&(this._width=Math.round(e.width))})}connectedCallback(){super.connectedCallback(),this._sizes.observe(this)}disconnectedCallback(){super.disconnectedCallback(),this._sizes.disconnect()}render(){let{parts:e}=this.result,t=[{kind:"start"},...e.map(a=>({kind:a.kind,length_m:this.elements[a.element]?.length_m})),...e.at(-1)?.kind==="load"?[]:[{kind:"end"}]],n=h0(t,this._width);return l`<svg viewBox="0 0 ${this._width} ${n.height}" role="group"
      aria-label="The line from the transmitter to the antenna">
      ${n.items.map((a,i)=>this._wire(a,n.items[i+1]))}
      ${n.items.map((a,i)=>this._item(a,e[i-1],i-1))}
    </svg>`}_wire({x:e,y:t,width:n,row:a},i){let r=e+n;if(!i)return p;let[o,d]=[e+n/2,i.x+i.width/2];if(i.row===a)return Y`<path class="wire" d="M${o} ${t+56}H${d}"></path>`;let[c,h]=[t+128-1,i.y+56];return Y`<path class="wire turn" d="M${o} ${t+56}H${r-3}V${c}H3V${h}H${d}"></path>`}_item(e,t,n){let a=e.x+e.width/2,i=e.y+56;if(e.kind==="start")return this._end(a,e.y,"Transmitter",this._sent(),g3(a,i));if(e.kind==="end")return this._end(a,e.y,"Antenna",this._delivered(),b3(a,i));let r=n===this.result.weakest,o=t.margin_db===null||t.refused_by?void 0:G(t.margin_db),[d,c]=o===void 0?["var(--refused)","var(--refused-ink)"]:[`var(--step-${o})`,`var(--step-${o}-ink)`],h=String(t.element)===this.open,f=p0(`${Vs(t)}`,e.width-6),_=e.y+30-13*(f.length-1),g=()=>$(this,"jw-line-open",{open:String(t.element)}),v=Y`<title>${l0(t,r)}</title>
      <rect class="hit" x=${e.x+1} y=${e.y+2} width=${e.width-2} height=${120} rx="8"></rect>
      ${f.map((k,S)=>Y`<text class="name" x=${a} y=${_+13*S}>${k}</text>`)}
      ${this._body(e,a,i,d)}
      ${r?Y`<rect class="weakest" x=${e.x+4} y=${i-19} width=${e.width-8} height="60" rx="8"></rect>`:p}
      <rect x=${a-g0/2} y=${i+17} width=${g0} height="20" rx="5" style="fill:${d}"></rect>
      <text class="margin" x=${a} y=${i+31} style="fill:${c}">${Ys(t).replace(" dB","")}</text>
      <text class="soft" x=${a} y=${i+53}>
        ${t.kind==="load"?this._delivered()[0]:W(t.loss_db)}
      </text>
      ${r?Y`<text class="weak" x=${a} y=${i+67}>weakest</text>`:p}`;return t.kind==="load"?Y`<g data-part=${n}>${v}</g>`:Y`<g class="part" role="button" tabindex="0" data-part=${n} ?data-open=${h}
        @click=${g} @keydown=${k=>["Enter"," "].includes(k.key)&&(k.preventDefault(),g())}>
      ${v}
    </g>`}_body(e,t,n,a){let i=`fill:${a}`;if(ud.includes(e.kind)){let[o,d]=[e.x+4,e.x+e.width-4];return e.kind==="wires"?Y`<rect style=${i} x=${o} y=${n-6} width=${d-o} height="12"></rect>
          <path class="body" d="M${o} ${n-6}H${d}M${o} ${n+6}H${d}"></path>`:Y`<rect class="body" style=${i}
        x=${o} y=${n-6} width=${d-o} height="12" rx=${e.kind==="cable"?6:0}></rect>`}if(e.kind==="joint")return Y`<path class="body" style=${i}
          d="M${t-15} ${n-8}h11v-5h8v5h11v16h-11v5h-8v-5h-11z"></path>
        <path class="body" d="M${t} ${n-13}v26"></path>`;let r=e.kind in f0?Y`<path class="wire" d="M${t} ${n}${f0[e.kind]}"></path>`:p;return Y`<rect class="body" style=${i}
      x=${t-19} y=${n-14} width="38" height="28" rx="3"></rect>${r}`}_end(e,t,n,a,i){let[r,o]=a;return Y`<g>
      <text class="name" x=${e} y=${t+30}>${n}</text>${i}
      <text class="margin" x=${e} y=${t+56+31}>${r}</text>
      ${o?Y`<text class="soft" x=${e} y=${t+56+47}>${o}</text>`:p}
    </g>`}_sent(){let{power_w:e,transmitter:t}=this.result;return t.folded?[B(t.forward_w,"W",2),`of ${C(t.set_w)}`]:[C(e)]}_delivered(){let{delivered_w:e,delivered_low_w:t,power_w:n,loss_db:a}=this.result;if(n===0)return[W(a)];let[i,r]=[ps(e),ps(t)];return i===r?[i]:[i,`worst ${r}`]}};function g3(s,e){return Y`<rect class="own" x=${s-19} y=${e-14} width="38" height="28" rx="4"></rect>
    <path class="wire" d="M${s-9} ${e}q4.5 -11 9 0t9 0"></path>`}function b3(s,e){return Y`<path class="own"
    d="M${s} ${e+12}V${e-4}M${s-14} ${e-20}L${s} ${e-4}L${s+14} ${e-20}Z"></path>`}customElements.define("jw-line-drawing",hd);var _3="Likely by the figures of good parts, at worst by the cautious ones.",w3="The phase of the antenna’s SWR is unknown: likely is the middle of all phases, at worst is the worst of them, as the line’s length may put the standing wave.",pd=class extends w({result:m(u),outdated:{type:String}}){static styles=[y,R(z),b`
      .verdict { display: flex; gap: var(--space-4); align-items: center; }
      b.chip {
        padding: var(--space-3) var(--space-3); border-radius: var(--round); font-size: var(--type-title);
        line-height: 1; white-space: nowrap;
      }
      b.none { background: var(--refused); color: var(--refused-ink); font-size: var(--type-text); }
      .sides + .quiet { margin-top: var(--space-1); }
      .note { margin-top: var(--space-2); color: var(--soft); font-size: var(--type-text); }
      .held { margin-top: var(--space-2); padding-left: var(--space-3); border-left: 4px solid var(--alarm); }
      .sides { width: auto; min-width: min(100%, 420px); margin-top: var(--space-3); font-size: var(--type-text); }
      .sides td { font-weight: 650; }
      .sides th { font-weight: 400; }
      .sides :is(th, td).number { padding-left: var(--space-3); }
      .facts {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(130px, 1fr)); gap: var(--space-2) var(--space-4);
        margin-top: var(--space-3);
      }
      dt { color: var(--soft); font-size: var(--type-fine); }
      dd { font-weight: 650; }
      dd small { display: block; font-weight: 400; line-height: 1.25; color: var(--soft); font-size: var(--type-fine); }
      .outdated {
        margin-bottom: var(--space-2); padding: var(--space-2) var(--space-3); border: 1px dashed var(--alarm);
        border-radius: var(--round);
        color: var(--alarm); font-size: var(--type-text);
      }
    `];render(){let{result:e}=this,{folded:t,sentence:n}=e.transmitter;return l`${this.outdated?l`<p class="outdated">${this.outdated}</p>`:p}
      <div class="verdict">
        ${e.margin_db===null?l`<b class="chip none">${this._instead()}</b>`:l`<b class="chip" data-step=${G(e.margin_db)}>${A(e.margin_db)} dB</b>`}
        <p id="verdict" role="status">${e.verdict}</p>
      </div>
      ${n?l`<p id="transmitter" class=${t?"held":"note"}>${n}</p>`:p}
      ${e.parts.map(a=>this._said(a))}
      ${e.notes.map(a=>l`<p class="note">${a}</p>`)}
      ${this._sides()}
      <p class="quiet">${this.result.phase_known?_3:w3}</p>
      <dl class="facts">
        ${this._facts().map(([a,i,r])=>l`<div><dt>${a}</dt><dd>${i} ${r?l`<small>${r}</small>`:p}</dd></div>`)}
      </dl>`}_instead(){let{parts:e,power_w:t}=this.result;return e.some(n=>n.refused_by)?"refused":t===0?"receive":"no limit"}_said(e){let t=e.tuner&&!e.tuner.reachable;return ta(e).map(n=>l`<p class=${t?"held":"note"} data-said=${e.kind}>${n}</p>`)}_sides(){return l`<table class="plain sides">
      <thead>
        <tr>
          <td></td><th scope="col" class="number">${Js}</th><th scope="col" class="number">${zt}</th>
        </tr>
      </thead>
      <tbody>
        ${ms(this.result).map(({id:e,term:t,likely:n,worst:a})=>l`<tr data-side=${e}>
            <th scope="row">${t}</th><td class="number">${n}</td><td class="number">${a}</td>
          </tr>`)}
      </tbody>
    </table>`}_facts(){let{result:e}=this,{folded:t}=e.transmitter,{largest_power_w:n,largest_power_set_by:a}=e,i=a===null?void 0:e.parts[a];return[["SWR at the antenna",Pe(e.antenna.vswr),e.phase_known?tr(e.antenna):"phase unknown"],...e.mismatch_db>0?[[t?"Held back and reflected":"Reflected",W(e.mismatch_db),"at the transmitter"]]:[],...e.margin_db===null?[]:[["Margin",y3(e.margin_db,e.margin_high_db),"by how good the parts are"]],["Largest safe power",n===null?"none":C(Be(n,3)),i?`set by ${i.name}`:""],["At",M(e.frequency_hz),e.column.name]]}},y3=(s,e)=>A(s)===A(e)?`${A(s)} dB`:`${A(s)} to ${A(e)} dB`;customElements.define("jw-line-verdict",pd);var md=class extends w({result:m(u),answered:m(u),outdated:{type:String},open:{type:String}}){static styles=[y,T,b`:host {
      display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); align-content: start; min-width: 0;
    }`];render(){let{result:e,answered:t}=this;return l`<section class="panel">
        <h2 class="unseen">Answer</h2><jw-line-verdict .result=${e} .outdated=${this.outdated}></jw-line-verdict>
      </section>
      <section class="panel">
        <h2>The line drawn <small>tap a part to see how its figures are made</small></h2>
        <jw-line-drawing .result=${e} .elements=${t.elements} .open=${this.open}></jw-line-drawing>
        <p class="legend quiet">Under each part its margin in dB, coloured as in the matrix, and what it loses.</p>
      </section>`}};customElements.define("jw-line-answer",md);var b0=s=>s,v3=globalThis.trustedTypes?.createPolicy("jointwise-formula",{createHTML:b0})??{createHTML:b0},fd=new Map;function sr(s){if(!fd.has(s)){let e=document.createElement("template");e.innerHTML=v3.createHTML(s),e.content.querySelector("math")?.setAttribute("display","block"),fd.set(s,e)}return fd.get(s).content.cloneNode(!0)}var _0={alpha:"α",beta:"β",gamma:"γ",Gamma:"Γ",delta:"δ",Delta:"Δ",epsilon:"ε",eps:"ε",eta:"η",theta:"θ",kappa:"κ",lambda:"λ",lamda:"λ",mu:"µ",pi:"π",rho:"ρ",sigma:"σ",tau:"τ",phi:"φ",chi:"χ",psi:"ψ",omega:"ω"};function w0(s){let[e,...t]=s.split("_");return[_0[e]??e,t.map(n=>_0[n]??n).join(", ")]}function na(s){let[e,t]=w0(s);return l`<var>${e}${t?l`<sub>${t}</sub>`:""}</var>`}function Qs(s){for(let e of s)e.scrollWidth>e.clientWidth?e.tabIndex=0:e.removeAttribute("tabindex")}var gd=class extends w({catalogue:m(u)}){static styles=[y,b`
      article { margin-top: var(--space-4); padding-top: var(--space-4); border-top: 1px solid var(--line); }
      .formula { overflow-x: auto; padding: var(--space-2) 0; font-size: var(--type-lead); }
      li { padding: var(--space-1) 0; font-size: var(--type-small); }
    `];updated(){Qs(this.renderRoot.querySelectorAll(".formula"))}render(){let{formulas:e,sources:t}=this.catalogue;return l`<p>
        The margin of a cell is the smallest of three limits: heat of the contact, heat of the cable, and voltage. The
        match is no limit of power: a joint whose return loss is less than asked for is refused. Each number on the page
        comes from the formulas below, and a cell’s derivation shows them with the values put in. A value with differing
        sources is a range: its cautious end decides.
      </p>
      ${e.map(n=>this._formula(n))}
      <h3>Sources</h3>
      <ul>
        ${t.map(n=>l`<li>${Me(n)} <span class="kind">${n.seen}</span></li>`)}
      </ul>`}_formula(e){let t=this.catalogue.sources.find(({id:n})=>n===e.source);return l`<article data-formula=${e.id}>
      <h3>${e.title}</h3>
      <div class="formula">${sr(e.mathml)}</div>
      <table class="plain">
        <tbody>
          ${e.symbols.map(n=>l`<tr>
              <td>${na(n.symbol)}</td><td>${n.meaning}</td><td>${n.unit==="1"?"":n.unit}</td>
            </tr>`)}
        </tbody>
      </table>
      <p class="quiet">Valid: ${e.validity}. Source: ${t?Me(t):e.source}.</p>
    </article>`}};customElements.define("jw-methods",gd);var bd=class extends w({steps:m(u),catalogue:m(u)}){static styles=[y,ae,b`
      ol { list-style: none; margin: 0; padding: 0; }
      li { padding: var(--space-3) 0; border-top: 1px solid var(--line); }
      .title { display: flex; flex-wrap: wrap; gap: 0 var(--space-2); align-items: baseline; }
      .formula { overflow-x: auto; padding: var(--space-2) 0; font-size: var(--type-lead); }
      .plain { font-size: var(--type-small); }
      .plain td { border-bottom-style: dotted; }
      .plain td:first-child { white-space: nowrap; }
      .result { margin-top: var(--space-1); font-weight: 650; }
      summary {
        cursor: pointer; min-height: var(--target); align-content: center; color: var(--soft);
        font-size: var(--type-small);
      }
      @media print {
        li { break-inside: avoid; padding: 1mm 0; }
        .formula { overflow: visible; padding: var(--space-half) 0; font-size: var(--type-text); }
        /* a long one fits the column */
        .formula[tabindex] { font-size: 4.7pt; }
      }
    `];updated(){Qs(this.renderRoot.querySelectorAll(".formula"))}render(){let e=this.steps.filter(t=>t.end==="high");return l`${Ns()==="us"?l`<p class="quiet">The working is in SI units.</p>`:p}
      ${this._list(this.steps.filter(t=>t.end!=="high"))}
      ${e.length>0?l`<details class="more">
            <summary>The same with the most generous credible figures (${e.length} steps)</summary>
            ${this._list(e)}
          </details>`:p}`}_list(e){return l`<ol>
      ${e.map(t=>this._step(t))}
    </ol>`}_step(e){let t=this.catalogue?.formulas.find(({id:n})=>n===e.formula);return l`<li data-formula=${e.formula}>
      <div class="title">
        <strong>${t?.title??e.formula}</strong>
        ${e.purpose?l`<span class="quiet">${e.purpose}</span>`:p}
      </div>
      ${t?l`<div class="formula">${sr(t.mathml)}</div>`:p}
      <table class="plain">
        <tbody>
          ${e.inputs.map(n=>this._input(n))}
        </tbody>
      </table>
      <p class="result">${na(e.result.symbol)} = ${B(e.result.value,e.result.unit)}</p>
    </li>`}_input(e){let t=Li(e.source)?this.catalogue?.sources.find(({id:a})=>a===e.source):void 0,n=$i(e.source,this.catalogue?.packs);return l`<tr>
      <td>${na(e.symbol)} = ${B(e.value,e.unit)}</td>
      <td>
        ${e.meaning}
        ${e.kind?l`<span class="kind">${e.kind}</span>`:p}${ce(n)}
        ${t?l`<br><span class="quiet">${Me(t)}</span>`:p}
      </td>
    </tr>`}};customElements.define("jw-steps",bd);var _d=class extends w({parts:m(u),steps:m(u),catalogue:m(u)}){static styles=[y,ae,R(z),b`
      section { margin-bottom: var(--space-4); }
      .head { display: flex; gap: var(--space-3); align-items: center; margin-bottom: var(--space-2); }
      .chip {
        padding: var(--space-2) var(--space-3); border-radius: var(--round); font-weight: 700;
        font-size: var(--type-lead); line-height: 1;
        white-space: nowrap;
      }
      .chip.none { background: var(--refused); color: var(--refused-ink); font-size: var(--type-text); }
      .small { padding: var(--space-half) var(--space-2); border-radius: 5px; font-weight: 700; }
      .facts {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: var(--space-2) var(--space-4);
      }
      dt { color: var(--soft); font-size: var(--type-fine); }
      dd { font-weight: 600; }
      .note { margin-top: var(--space-2); font-size: var(--type-text); }
      .plain { margin-top: var(--space-3); }
      .scroll { overflow-x: auto; }
      h3 { margin-bottom: var(--space-2); }
    `];render(){return l`${this.parts.map(e=>this._part(e))}
      <section>
        <h3>Steps</h3>
        ${this._steps()}
      </section>`}_steps(){return this.steps?this.steps.length===0?l`<p class="quiet">
        Nothing more is derived for it: its figures are those given, measured, or solved with the whole line.
      </p>`:l`<jw-steps .steps=${this.steps} .catalogue=${this.catalogue}></jw-steps>`:l`<p class="quiet" role="status">Calculating…</p>`}_part(e){let t=e.binding?`limited by ${hs(e.binding)}`:"",n=e.undecided?"; the sources disagree on which side of the limit it lies":"",a=e.margin_db===null;return l`<section>
      <div class="head">
        <span class=${a?"chip none":"chip"}
          data-step=${a?"none":G(e.margin_db)}>${Ys(e)}</span>
        <p><strong>${e.name}</strong>${ce(e.pack)} ${t}${n}</p>
      </div>
      <dl class="facts">
        ${this._facts(e).map(([i,r])=>l`<div><dt>${i}</dt><dd>${r}</dd></div>`)}
      </dl>
      ${[e.refusal,...ta(e),...e.marks].filter(Boolean).map(i=>l`<p class="note">${i}</p>`)}
      ${e.tuner?this._setting(e.tuner):p}${this._limits(e)}
    </section>`}_setting({parts:e}){let t=(n,a)=>n===null?"–":B(n,a,3);return l`<div class="scroll"><table class="plain">
      <thead>
        <tr>
          <th scope="col">Set to</th><th scope="col" class="number">Value</th>
          <th scope="col" class="number">Peak</th><th scope="col" class="number">Current</th>
          <th scope="col" class="number">Heat</th>
        </tr>
      </thead>
      <tbody>
        ${e.map(({what:n,place:a,henry:i,farad:r,peak_voltage_v:o,current_a:d,lost_w:c})=>l`<tr>
            <th scope="row">${n}, ${a}</th>
            <td class="number">${n==="coil"?t(i,"H"):t(r,"F")}</td>
            <td class="number">${t(o,"V")}</td><td class="number">${t(d,"A")}</td>
            <td class="number">${t(c,"W")}</td>
          </tr>`)}
      </tbody>
    </table></div>`}_limits(e){let t=Object.keys(e.margin_by_limit_db);return t.length===0?p:l`<table class="plain">
      <thead><tr><th scope="col">Limit</th><th scope="col" class="number">Margin</th></tr></thead>
      <tbody>${t.map(n=>this._limit(n,e))}</tbody>
    </table>`}_limit(e,t){let n=t.margin_by_limit_db[e];return l`<tr data-limit=${e}>
      <th scope="row">${a0(e)}${e===t.binding?", the smallest":""}</th>
      <td class="number">
        ${n===null?l`<span class="quiet">no margin</span>`:l`<span class="small" data-step=${G(n)}>${A(n)} dB</span>`}
      </td>
    </tr>`}_facts(e){let t=(a,i,r)=>i===null?se(a,r,3):`${se(a,r,3)} of ${se(i,r,3)}`;return[["Loss as the waves stand",e.loss_db===null?void 0:`${W(e.loss_db)}, ${B(e.lost_w??0,"W",3)}`],["Loss between matched ends",e.tuner?void 0:W(e.matched_loss_db)],["Margin between",e.margin_db===null?void 0:`${A(e.margin_db)} and ${A(e.margin_high_db)} dB`],["Peak voltage",e.peak_voltage_v===null?void 0:t(e.peak_voltage_v,e.allowed_voltage_v,"V")],["Peak current",e.peak_current_a===null?void 0:B(e.peak_current_a,"A",3)],["Hottest place",e.temperature_c===null?void 0:t(e.temperature_c,e.allowed_temperature_c,"°C")],["Return loss of it alone",e.return_loss_db===null?void 0:B(e.return_loss_db,"dB",3)],["SWR into it",e.vswr===null?void 0:Pe(e.vswr)],["Forward, reflected",e.forward_w===null?void 0:`${B(e.forward_w,"W",3)}, ${B(e.reflected_w,"W",3)}`],["Largest safe power",e.largest_power_w===null?"none known":C(Be(e.largest_power_w,3))],["From the transmitter",Te(e.distance_m,4)]].filter(([,a])=>a!==void 0)}};customElements.define("jw-line-derivation",_d);var wd=class extends w({element:{type:Number},answered:m(u),result:m(u),current:{type:Boolean},catalogue:m(u),error:m(u)}){static styles=[y];render(){let{catalogue:e,result:t}=this,n=l`<p role="status">${this.error?.message??"Calculating…"}</p>`;if(this.element===void 0)return e?l`<jw-methods .catalogue=${e}></jw-methods>`:n;if(!t)return n;let a=cd(t,this.element),i=this.current&&this.answered.explain===this.element?t.steps:void 0;return l`<jw-line-derivation .parts=${a} .steps=${i} .catalogue=${e}></jw-line-derivation>`}};customElements.define("jw-line-detail",wd);var y0=5,v0=.05,yd=class extends w({result:m(u),current:{type:Boolean},compared:m(u),after:m(u)}){static styles=[y,R(z),b`
      ol { list-style: none; margin: 0; padding: 0; }
      li { padding: var(--space-2) 0; border-top: 1px solid var(--line); }
      ol:first-child > li:first-child { border-top: 0; padding-top: 0; }
      .row {
        display: grid; grid-template-columns: minmax(0, 1fr) auto auto; gap: var(--space-half) var(--space-3);
        align-items: center;
      }
      .what { font-weight: 600; }
      .cost { display: block; font-weight: 400; color: var(--soft); font-size: var(--type-small); }
      .gain { text-align: right; font-size: var(--type-text); }
      .gain b { white-space: nowrap; }
      .gain span { display: block; color: var(--soft); font-size: var(--type-fine); }
      summary {
        cursor: pointer; min-height: var(--target); align-content: center; font-size: var(--type-text);
        border-top: 1px solid var(--line);
      }
      .beside {
        margin: var(--space-2) 0 var(--space-1); padding: var(--space-3); background: var(--sunk);
        border-radius: var(--round);
      }
      .scroll { overflow-x: auto; }
      .plain td { font-weight: 650; }
      .plain td small { display: block; font-weight: 400; color: var(--soft); }
      .acts { display: flex; flex-wrap: wrap; gap: var(--space-2); margin-top: var(--space-2); }
      @media (max-width: 480px) {
        .row { grid-template-columns: minmax(0, 1fr) auto; }
        .row .what { grid-column: 1 / -1; }
        .gain { text-align: left; }
        .gain :is(b, span) { display: inline; }
      }
      @media print { button, details { display: none; } }
    `];render(){let{changes:e}=this.result,t=e.filter(({same:i})=>!i),n=e.filter(i=>i.same),a=t.slice(y0);return e.length===0?l`<p class="quiet">Nothing in the catalogue would do better here.</p>`:l`${t.length===0?l`<p>Nothing in the catalogue would make a difference.</p>`:p}
      ${this._list(t.slice(0,y0))}
      ${this._folded(a,`${a.length} more`)}
      ${this._folded(n,`${n.length} that ${n.length===1?"makes":"make"} no difference`)}`}_list(e){return e.length===0?p:l`<ol>${e.map(t=>this._item(t))}</ol>`}_folded(e,t){return e.length===0?p:l`<details class="more"><summary>${t}</summary>${this._list(e)}</details>`}_item(e){let t=e===this.compared,n=()=>$(this,"jw-line-compare",t?{}:{change:e});return l`<li data-change=${e.title}>
      <div class="row">
        <p class="what">${e.title}
          ${e.costs.length>0?l`<span class="cost">${e.costs.join("; ")}</span>`:p}</p>
        <p class="gain">${this._gain(e)}</p>
        <button aria-expanded=${t} ?disabled=${!this.current&&!t} aria-label="Compare: ${e.title}"
          @click=${n}>Compare</button>
      </div>
      ${t?this._beside(e):p}
    </li>`}_gain({gained_db:e,gained_low_db:t,gained_high_db:n,margin_gained_db:a,same:i}){let r=e!==null&&Math.abs(e)>=v0,o=a===null||Math.abs(a)<v0?"":`${A(a)} dB margin`;return i?l`<b>no difference</b> <span>${[$0(t,n),o].filter(Boolean).join("; ")}</span>`:!r&&o?l`<b>${o}</b>`:l`<b>${e===null?"–":`${A(e)} dB`}</b>
      <span>${[$0(t,n),o].filter(Boolean).join("; ")}</span>`}_beside(e){let{result:t,problem:n}=this.after;return l`<div class="beside" role="group" aria-label="Before and after">
      ${t?this._table(this.result,t):l`<p class=${n?"error":"quiet"} role="status">${n??"Calculating…"}</p>`}
      <div class="acts">
        <button class="use" ?disabled=${!this.current||n!==void 0}
          @click=${()=>$(this,"jw-line-take",{change:e})}>Use this</button>
        <button @click=${()=>$(this,"jw-line-compare",{})}>Leave it</button>
      </div>
    </div>`}_table(e,t){let[n,a]=[ms(e),ms(t)],i=({likely:d,worst:c})=>l`${d} <small>at worst ${c}</small>`,r=(d,c,h)=>l`<tr><th scope="row">${d}</th><td>${c}</td><td>${h}</td></tr>`,o=n.flatMap(d=>{let c=a.find(({id:h})=>h===d.id);return d.id==="impedance"||!c?[]:[r(d.term,i(d),i(c))]});return l`<div class="scroll"><table class="plain" aria-label="${Js}, and ${zt.toLowerCase()}">
      <thead><tr><td></td><th scope="col">As it stands</th><th scope="col">With the change</th></tr></thead>
      <tbody>
        ${o}${r("Smallest margin",x0(e),x0(t))}
        ${r("Weakest part",k0(e),k0(t))}
      </tbody>
    </table></div>`}},$0=(s,e)=>s===null||e===null?"":`${A(s)} to ${A(e)} dB`,x0=({margin_db:s})=>s===null?l`<span class="chip none">none</span>`:l`<span class="chip" data-step=${G(s)}>${A(s)} dB</span>`,k0=({weakest:s,parts:e})=>s===null?"–":e[s].name;customElements.define("jw-line-changes",yd);var we={displayModeBar:!1,responsive:!0,showTips:!1},ee={ink:"#16212b",soft:"#51606d",line:"#d9d6cf",band:"#1f5690",other:"#7a4a00"},Zs=s=>s.replace(/^rgb\((.*)\)$/,"rgba($1, 0.18)").replace(/^#.*$/,"rgba(31, 86, 144, 0.18)");function S0({cell:s,limit:e,along:t,colours:n=ee}){let{curves:a}=s,i=t==="frequency",r=i?a.frequency_hz:a.power_w,o=a[`margin_by_${t}_db`][e.id],d=a[`margin_high_by_${t}_db`][e.id],c=i?s.frequency_hz:s.power_w,h=`%{y:+.1f} dB at %{x:.4s}${i?"Hz":"W"}`,f=c>0&&e.margin_db!==null,{yaxis:_,...g}=q0({x:i?"frequency, Hz":"power, W",y:`${e.name.toLowerCase()}: margin, dB`,colours:n});return{data:[...O0({x:r,low:o,high:d,hover:h,colours:n}),...f?[A0(c,e.margin_db,n,"%{y:+.1f} dB")]:[]],layout:{...g,yaxis:{..._,tickformat:"+d"},shapes:[vd(n)]},config:we}}function j0({cell:s,colours:e=ee}){let{curves:t,frequency_hz:n,match:a}=s;return{data:[...O0({x:t.frequency_hz,low:t.return_loss_by_frequency_db,high:t.return_loss_high_by_frequency_db,hover:"%{y:.1f} dB at %{x:.4s}Hz",colours:e}),A0(n,a.return_loss_db,e,"%{y:.1f} dB")],layout:{...q0({x:"frequency, Hz",y:"return loss, dB",colours:e}),shapes:[M0(a.asked_db,e)]},config:we}}var E0=s=>`Return loss of ${s.family.name} alone against frequency; the cell is marked, the ${s.match.asked_db} dB asked for is a line across`;function O0({x:s,low:e,high:t,hover:n,colours:a}){let i=(r,o,d)=>({x:s,y:r,name:o,type:"scatter",mode:"lines",line:{color:a.band,width:2},hovertemplate:`${n}<extra>${o}</extra>`,...d});return[i(t,"generous",{line:{color:a.band,width:1,dash:"dot"}}),i(e,"cautious",{fill:"tonexty",fillcolor:Zs(a.band)})]}function T0({cell:s,limit:e,along:t}){let n=t==="frequency"?"at the cell’s power":"at the cell’s frequency";return`${e.name}: margin of ${s.family.name} against ${t}, ${n}; the cell is marked`}var A0=(s,e,t,n)=>({x:[s],y:[e],name:"this cell",type:"scatter",mode:"markers",cliponaxis:!1,marker:{color:t.other,size:11,symbol:"diamond"},hovertemplate:`${n}<extra>this cell</extra>`}),$3=260;function xe({x:s,y:e,colours:t,height:n=$3}){let a=i=>({title:{text:i,standoff:8},gridcolor:t.line,linecolor:t.soft,zeroline:!1,fixedrange:!0,automargin:!0});return{height:n,margin:{l:52,r:12,t:10,b:44},font:{color:t.ink,size:12,family:"system-ui, sans-serif"},paper_bgcolor:"rgba(0,0,0,0)",plot_bgcolor:"rgba(0,0,0,0)",xaxis:a(s),yaxis:a(e),showlegend:!1,dragmode:!1,hovermode:"closest"}}var M0=(s,e)=>({type:"line",xref:"paper",x0:0,x1:1,y0:s,y1:s,line:{color:e.ink,width:1.5}}),vd=s=>M0(0,s);function q0({x:s,y:e,colours:t}){let n=xe({x:s,y:e,colours:t});return{...n,xaxis:{...n.xaxis,type:"log",exponentformat:"SI",dtick:1}}}var C0=matchMedia("(prefers-color-scheme: dark)"),R0=660,$d=class extends w({figure:m(u),label:{type:String},load:m(u),_error:x(u)}){static styles=[y,b`
      figure { height: var(--chart, 260px); position: relative; overflow: hidden; }
      .swatch { display: none; }
      .ink { color: var(--ink); } .soft { color: var(--soft); } .line { color: var(--line); }
      .band { color: light-dark(#1f5690, #86adcf); } .other { color: light-dark(#7a4a00, #e0b46c); }
      .main-svg { position: absolute; top: 0; left: 0; pointer-events: none; }
      .main-svg .draglayer { pointer-events: all; }
      /* the library gives titles and ticks sizes of their own */
      @media screen { .main-svg text { font-size: var(--type-fine) !important; } }
      @media print { :host { break-inside: avoid; } }
    `];constructor(){super(),this._redraw=()=>this._draw(),this._redrawLight=()=>this._draw(ee,{width:Math.min(this._place?.clientWidth||R0,R0)}),this._redrawWide=()=>this._draw().then(()=>this._place?.clientWidth&&this._library?.Plots.resize(this._place)),this._theme=new MutationObserver(this._redraw),this._drawn=Promise.resolve()}connectedCallback(){super.connectedCallback(),C0.addEventListener("change",this._redraw),window.addEventListener("beforeprint",this._redrawLight),window.addEventListener("afterprint",this._redrawWide),this._theme.observe(document.documentElement,{attributeFilter:["data-theme"]}),this.hasUpdated&&this._draw()}disconnectedCallback(){super.disconnectedCallback(),C0.removeEventListener("change",this._redraw),window.removeEventListener("beforeprint",this._redrawLight),window.removeEventListener("afterprint",this._redrawWide),this._theme.disconnect();let{_library:e,_place:t}=this;this._drawn.then(()=>this.isConnected||e?.purge(t))}render(){return this._error?l`<p class="error">${this._error}</p>`:l`${Object.keys(ee).map(e=>l`<i class="swatch ${e}"></i>`)}
      <figure role="img" aria-label=${this.label}></figure>`}updated(e){e.has("figure")&&this._draw()}get _place(){return this.renderRoot.querySelector("figure")}get _colours(){let t=Object.keys(ee).map(n=>[n,getComputedStyle(N(this.renderRoot,`.${n}`)).color]);return Object.fromEntries(t)}async _draw(e,t={}){try{this._library||(this._library=await this.load())}catch(o){this._error=o.message;return}if(!this.isConnected||!this._place)return;let{data:n,layout:a,config:i}=this.figure(e??this._colours),r=this._library.react(this._place,n,{...a,...t},i);this._drawn=Promise.allSettled([this._drawn,r]).then(()=>{}),await r}};customElements.define("jw-chart",$d);var kd="Whole line",x3=24,k3=70,[Sd,N0]=[.08,.84],S3=({transmitter:{folded:s}})=>s?"Held back and reflected":"Reflected at the transmitter";function jd(s){let e=[...s.mismatch_db>0?[{name:S3(s),loss:s.mismatch_db}]:[],...s.parts.filter(({kind:a})=>a!=="load").map(a=>({name:Vs(a),loss:a.loss_db??0}))],t=0;return[...e.map(a=>{let i={...a,from:t};return t+=a.loss,i}),{name:kd,from:0,loss:s.loss_db??t},...s.loss_high_db===null?[]:[{name:`${kd}, at worst`,from:0,loss:s.loss_high_db}]]}function L0(s,e=ee){let t=jd(s),n=t.map((i,r)=>r),a=xe({x:"loss, dB",y:"",colours:e,height:t.length*x3+k3});return{data:[{type:"bar",orientation:"h",y:n,base:t.map(({from:i})=>i),x:t.map(({loss:i})=>i),marker:{color:t.map(({name:i})=>i.startsWith(kd)?e.ink:e.band)},text:t.map(({loss:i})=>W(i)),textposition:"outside",cliponaxis:!1,customdata:t.map(({name:i})=>i),hovertemplate:"%{customdata}: %{text}<extra></extra>"}],layout:{...a,margin:{...a.margin,r:64},xaxis:{...a.xaxis,rangemode:"tozero"},yaxis:{...a.yaxis,autorange:"reversed",tickvals:n,ticktext:t.map(({name:i})=>j3(i)),showgrid:!1}},config:we}}var j3=s=>s.length>22?`${s.slice(0,21)}…`:s;function E3({sweep:s,bands:e}){let t=s.band.filter(a=>a===s.band[0]).length,n=s.band.map((a,i)=>{let r=i%t;return Math.floor(i/t)+Sd+N0*r/Math.max(t-1,1)});return{count:t,x:n,names:e.map(({column:a})=>a.name)}}var xd=(s,e)=>s.flatMap((t,n)=>n%e===e-1?[t,null]:[t]);function O3(s,e,t){if(e===null||t===null)return{x:[],y:[]};let[n,a]=[s+Sd,s+Sd+N0];return{x:[n,a,a,n,n,null],y:[e,e,t,t,e,null]}}function T3(s,e,t,n){let a=e.bands.map(i=>{let r=s.bands.findIndex(({column:o})=>o.id===i.column.id);return O3(r,i[t][0],i[t].at(-1))});return{type:"scatter",mode:"lines",fill:"toself",fillcolor:Zs(n.band),line:{width:0},x:a.flatMap(({x:i})=>i),y:a.flatMap(({y:i})=>i),hoverinfo:"skip"}}function z0({result:s,spread:e,key:t,title:n,colours:a=ee}){let{count:i,x:r,names:o}=E3(s),d=xe({x:"",y:n,colours:a,height:280}),c=s.bands.findIndex(({column:_})=>_.id===s.column.id),h=t==="margin_db",f=(_,g,v="")=>({type:"scatter",mode:"lines",x:xd(r,i),y:xd(_,i),connectgaps:!1,line:{color:a.band,...g},customdata:xd(s.sweep.frequency_hz.map(M),i),hovertemplate:`%{y:${h?"+":""}.2f}${h?" dB":""}${v} at %{customdata}<extra></extra>`});return{data:[...e?[T3(s,e,t,a)]:[],...h?[]:[f(P0(s),{width:1.5,dash:"dot"}," at worst")],f(s.sweep[t],{width:2.5})],layout:{...d,xaxis:{...d.xaxis,tickvals:o.map((_,g)=>g+.5),ticktext:o,tickangle:-90,range:[0,o.length],showgrid:!1},yaxis:{...d.yaxis,...h?{tickformat:"+d"}:q3(s)},shapes:[...h?[vd(a)]:[],...c===-1?[]:[C3(c,a)]]},config:we}}var A3=10,M3=.9;function Ed(s){let e=P0(s),t=e.filter((a,i)=>s.sweep.band[i]===s.column.id),n=Math.max(A3,...t.map(a=>1.2*(a??0)));return e.some(a=>a===null||a>n)?n:void 0}function q3(s){let e=Ed(s);return e?{range:[M3,e]}:{rangemode:"normal"}}var P0=({sweep:s})=>s.vswr.map((e,t)=>sa(e,s.vswr_high[t])),C3=(s,e)=>({type:"rect",layer:"below",xref:"x",yref:"paper",x0:s,x1:s+1,y0:0,y1:1,line:{width:1,color:e.other,dash:"dot"}});function R3(s){let e=s.standing_wave.distance_m.at(-1)??0;return[...new Set([...s.parts.map(({distance_m:t})=>t),e])]}var N3=1.4,L3=10,I0=({standing_wave:{half_waves:s}})=>s>L3;function W0(s,e=ee){let{distance_m:t,voltage_v:n,current_a:a,voltage_low_v:i,current_low_a:r}=s.standing_wave,{unit:o,shown:d}=ge("m"),c=t.map(d),h=xe({x:`from the transmitter, ${o}`,y:"peak voltage, V",colours:e}),f={color:e.ink,width:2,dash:"dash"},_=(g,v,k)=>({type:"scatter",mode:"lines",x:c,y:g,hovertemplate:`%{y:.3g} ${k} at %{x:.3g} ${o}<extra></extra>`,...v});return{data:[...i?[_(i,{line:{color:e.band,width:1.2}},"V")]:[],_(n,{line:{color:e.band,width:2.5},...i&&{fill:"tonexty",fillcolor:Zs(e.band)}},"V"),...r?[_(r,{line:{...f,width:1},yaxis:"y2"},"A")]:[],_(a,{line:f,yaxis:"y2"},"A")],layout:{...h,margin:{...h.margin,r:56},yaxis:{...h.yaxis,rangemode:"tozero",title:{text:"peak voltage, V (solid)",font:{color:e.band}}},yaxis2:{...h.yaxis,overlaying:"y",side:"right",range:[0,N3*Math.max(0,...a)||1],showgrid:!1,tickmode:"auto",title:{text:"peak current, A (dashed)",font:{color:e.ink}}},shapes:R3(s).map(d).map(g=>({type:"line",yref:"paper",x0:g,x1:g,y0:0,y1:1,line:{color:e.soft,width:1,dash:"dot"}}))},config:we}}var Od=class extends w({result:m(u),spread:m(u),drawing:{type:Number},failure:{type:String},load:m(u)}){static styles=[y,b`
      :host {
        display: grid; grid-template-columns: repeat(auto-fit, minmax(min(440px, 100%), 1fr)); gap: var(--space-3);
      }
      section {
        min-width: 0; padding: var(--space-3) var(--space-3); background: var(--card); border: 1px solid var(--line);
        border-radius: var(--round);
      }
      .spread {
        grid-column: 1 / -1; display: flex; flex-wrap: wrap; gap: var(--space-2) var(--space-4); align-items: center;
        min-height: var(--target);
      }
      h3 { font-size: var(--type-text); }
      @media print { .spread button { display: none; } section { break-inside: avoid; } }
    `];willUpdate(e){let{result:t,spread:n}=this;if(e.has("result")&&(this._loss=a=>L0(t,a),this._wave=a=>W0(t,a)),e.has("result")||e.has("spread")){let a=(i,r)=>o=>z0({result:t,spread:n,key:i,title:r,colours:o});this._margin=a("margin_db","smallest margin, dB"),this._vswr=a("vswr","SWR at the transmitter")}}render(){let{result:e}=this,t=(jd(e).length+1)*24+70,n=c0({likely:W(e.loss_db),worst:W(e.loss_high_db)}),[a,i,r,o]=[`Loss of each part, adding up to ${n}; the same numbers stand in the table of all numbers`,`Peak voltage and current along the line${this._isRange?", the most and the least at each place":""}; ends of the elements marked; largest ${this._largest()}`,`Smallest margin of the line on every band, dB; the chosen band is outlined${this._shaded}`,`SWR at the transmitter on every band; the chosen band is outlined${this._shaded}`];return l`<section>
        <h3>Where the loss goes</h3>
        <jw-chart id="loss" style="--chart:${t}px" .figure=${this._loss} .load=${this.load}
          label=${a}></jw-chart>
      </section>
      <section>
        <h3>Wave along the line at ${M(e.frequency_hz)}</h3>
        <jw-chart id="wave" .figure=${this._wave} .load=${this.load} label=${i}></jw-chart>
        <p class="quiet">${this._why()} Upright lines mark where one element ends and the next begins.</p>
      </section>
      ${e.power_w>0?l`<section>
            <h3>Smallest margin over the bands</h3>
            <jw-chart id="margin" style="--chart:280px" .figure=${this._margin} .load=${this.load}
              label=${r}></jw-chart>
          </section>`:p}
      <section>
        <h3>SWR over the bands</h3>
        <jw-chart id="vswr" style="--chart:280px" .figure=${this._vswr} .load=${this.load}
          label=${o}></jw-chart>
        <p class="quiet">At the transmitter: solid what is likely, dotted the worst.${this._beyond()}</p>
      </section>
      <div class="spread">${this._spread()}</div>`}_beyond(){let e=Ed(this.result);return e?` Above ${j(e,2)} it leaves the chart.`:""}get _isRange(){return this.result.standing_wave.voltage_low_v!==null}_why(){return this._isRange?I0(this.result)?`The line is ${Math.round(this.result.standing_wave.half_waves)} half waves long, too many crests to draw: shown are the largest and the least of each half wave, shaded between. A Smith chart would go round as often, so none is drawn.`:"Where the crests stand hangs on the phase at the antenna, which is unknown: shaded is what may come.":""}get _shaded(){return this.spread?", the spread shaded":""}_largest(){let{voltage_v:e,current_a:t}=this.result.standing_wave;return e.length===0?"unknown, as there is no cable":`${j(Math.max(...e),3)} V and ${j(Math.max(...t),3)} A`}_spread(){let{spread:e}=this,t=e?`The curves are those of the lengths as given. Shaded: nine of ten of ${e.draws.toLocaleString("en")} lines drawn at random within what is not known (electrical lengths, phases, tolerance of joints). ${d0(e)}`:"",n=(a,i)=>l`<button id="spread" @click=${()=>$(this,"jw-line-spread",{begin:i})}>${a}</button>`;if(this.drawing>0){let a=this.drawing.toLocaleString("en");return l`<p class="quiet" role="status">${t} Drawing ${a} lines at random…</p>
        ${n("Stop",!1)}`}return l`<p class="quiet" role="status">${this.failure||t||"No spread is drawn."}</p>
      ${e&&e.draws>=1e4?p:n("Draw the spread",!0)}`}};customElements.define("jw-line-charts",Od);var nr=(s,e)=>s===null?"–":se(s,e,3),B0=(s,e,t)=>s===null||e===null?nr(s,t):`${Mt(s,t,3)} of ${ss(e,t,3)}`,H0=[["From",s=>Te(s.distance_m,4)],["Loss",s=>W(s.loss_db)],["Heat",s=>nr(s.lost_w,"W")],["SWR",s=>Pe(s.vswr)],["Peak voltage",s=>B0(s.peak_voltage_v,s.allowed_voltage_v,"V")],["Peak current",s=>nr(s.peak_current_a,"A")],["Return loss",s=>nr(s.return_loss_db,"dB")],["Hottest",s=>B0(s.temperature_c,s.allowed_temperature_c,"°C")]],Td=class extends w({result:m(u)}){static styles=[y,ae,R(z),b`
      .scroll { overflow-x: auto; }
      .plain { min-width: 900px; }
      tfoot :is(th, td) { font-weight: 650; }
      @media print { .plain { min-width: 0; } }
    `];render(){return l`<div class="scroll" tabindex="0" role="group" aria-label="All numbers"><table class="plain">
      <thead>
        <tr>
          <th scope="col">Part</th>${H0.map(([e])=>l`<th scope="col" class="number">${e}</th>`)}
          <th scope="col" class="number">Margin</th><th scope="col">Limited by</th>
        </tr>
      </thead>
      <tbody>
        ${this.result.parts.map((e,t)=>this._row(e,t))}
      </tbody>
      <tfoot>${this._whole()}</tfoot>
    </table></div>`}_whole(){let{result:e}=this,t=(a,i,r,o,d)=>l`<tr>
      <th scope="row">Whole line, ${a.toLowerCase()}</th>
      <td></td><td class="number">${W(i)}</td><td></td><td class="number">${Pe(r)}</td>
      <td colspan="4">${e.power_w>0?`${ps(o)} at the antenna`:""}</td>
      <td class="number">${d===null?"–":`${A(d)} dB`}</td><td></td>
    </tr>`,n=sa(e.input.vswr,e.input_cautious.vswr);return l`${t(Js,e.loss_db,e.input.vswr,e.delivered_w,e.margin_high_db)}
      ${t(zt,e.loss_high_db,n,e.delivered_low_w,e.margin_db)}`}_row(e,t){let n=e.refused_by||e.margin_db===null?"none":G(e.margin_db);return l`<tr data-part=${t}>
      <th scope="row">${Vs(e)}${ce(e.pack)}</th>
      ${H0.map(([,a])=>l`<td class="number">${a(e)}</td>`)}
      <td class="number"><span class="chip" data-step=${n}>${Ys(e)}</span></td>
      <td>${e.binding?hs(e.binding):""}${t===this.result.weakest?", weakest":""}</td>
    </tr>`}};customElements.define("jw-line-numbers",Td);var z3=1e5,P3=.1;function I3(s){let{whole_cost_by_band_db:e,half_decibel_cost_by_band_db:t}=s.reception,n=s.bands.map(({column:o,loss_db:d},c)=>({id:o.id,name:o.name,loss:d,cost:e[c],half:t[c]})).filter(({loss:o,cost:d})=>o!==null&&d!==null&&o>0),a=(o,d)=>n.find(c=>c.id===o)??d,[i,r]=[a("40m",n[0]),a("70cm",n.at(-1))];return i&&r&&i!==r?[i,r]:[]}function U0({name:s,loss:e,cost:t}){let n=Math.abs(t)<P3?"nothing audible":`${t.toFixed(1)} dB`;return`on ${s} this line loses up to ${e.toFixed(1)} dB and costs ${n} on receive (${W(t)})`}function F0(s){let[e,t]=I3(s);return e?`${W3(U0(e))}; ${U0(t)}. Half a decibel more at the antenna takes ${W(e.half)} of signal over noise on ${e.name}, where the noise around the antenna is weakened along with the signal, and ${W(t.half)} on ${t.name}, where the noise of line and receiver rules.`:""}function D0({heard:s,external_noise_db:e,system_noise_db:t,antenna_temperature_k:n,system_temperature_k:a}){if(e===null||t===null||a===null)return"";let i=a<z3?`Noise at the antenna ${j(n,3)} K, with line and receiver ${j(a,3)} K. `:"",r=`${A(e)} dB at the antenna, ${A(t)} dB with line and receiver`;return`${s}. ${i}Over k·T₀·b: ${r}.`}var W3=s=>s[0].toUpperCase()+s.slice(1);var B3=["preamplifier.gain_db","preamplifier.noise_figure_db"],Ad="receiver.antenna_view",aa="given",H3="horizon",U3=290,F3={gain_db:15,noise_figure_db:1},Md=class extends w({request:m(u),result:m(u),names:m(u),refused:m(u)},O){static styles=[y,b`
      .fields {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: var(--space-1) var(--space-3);
        align-items: end;
      }
      label { display: block; font-size: var(--type-small); font-weight: 600; margin-bottom: var(--space-1); }
      .own { padding-bottom: var(--space-4); }
      .why { margin: var(--space-1) 0 var(--space-3); }
      .scroll { overflow-x: auto; }
      i { display: block; height: 8px; min-width: 1px; background: var(--soft); border-radius: 3px; }
      .two {
        display: grid; grid-template-columns: repeat(auto-fit, minmax(min(280px, 100%), 1fr)); gap: var(--space-4);
      }
      .bar { width: 40%; vertical-align: middle; }
      h3 { margin-bottom: var(--space-half); font-size: var(--type-text); }
      .plain :is(th, td) { padding-top: var(--space-half); padding-bottom: var(--space-half); }
      .here { font-weight: 700; }
      @media print { .fields { display: none; } .two { gap: 4mm; } }
    `];render(){let{reception:e,bands:t,column:n}=this.result,a=t.map((i,r)=>({id:i.column.id,name:i.column.name,cost:e.whole_cost_by_band_db[r]}));return l`<div class="fields" @jw-change=${this._changed}>${this._form()}</div>
      <p class="why">${F0(this.result)}</p>
      <div class="two">
        <section>
          <h3>By part on ${n.name}</h3>
          ${this._bars(e.costs.map(({part:i,name:r,cost_db:o})=>({id:String(i),name:r,cost:o})),"Whole line",e.whole_cost_db)}
          <p class="quiet">${D0(e)}</p>
        </section>
        <section><h3>Whole line by band</h3>${this._bars(a,"",0,n.id)}</section>
      </div>`}_bars(e,t,n,a){let i=Math.max(...e.map(({cost:o})=>o??0),n??0,.01),r=({id:o,name:d,cost:c})=>l`<tr data-id=${o} class=${o===a?"here":""}>
      <th scope="row">${d}</th>
      <td class="number">${c===null?"–":`${c.toFixed(2).replace("-","−")} dB`}</td>
      <td class="bar"><i style="width:${Math.max(c??0,0)/i*100}%"></i></td>
    </tr>`;return l`<table class="plain">
      <tbody>${e.map(r)}${t?r({id:"whole",name:t,cost:n}):p}</tbody>
    </table>`}_form(){let{receiver:e={}}=this.request,{preamplifier:t}=e,n=t?.before_element,a=c=>this.refused&&`${this.refused.group}.${this.refused.field}`===c?this.refused.message:"",i=(c,h)=>I(this.vocabulary,h,this.vocabulary.valueOf(c,h),a(h)),{antenna_temperature_k:r=null}=e,o=r===null?this.vocabulary.valueOf(e,Ad):aa,d=[...this.vocabulary.optionsOf(Ad),[aa,"a temperature"]];return l`${i(e,"receiver.noise_figure_db")}${i(e,"receiver.environment")}
      <div class="own">
        <label for="antenna-view">${this.vocabulary.labelOf(Ad)}</label>
        <select id="antenna-view" @change=${this._looked}>
          ${d.map(([c,h])=>l`<option value=${c} .selected=${c===o}>${h}</option>`)}
        </select>
      </div>
      ${o===aa?i(e,"receiver.antenna_temperature_k"):p}
      ${o===aa||o===H3?p:i(e,"receiver.elevation_deg")}
      <div class="own">
        <label for="preamplifier">Preamplifier</label>
        <select id="preamplifier" @change=${this._placed}>
          <option value="" .selected=${!t}>none</option>
          ${this.names.map((c,h)=>l`<option value=${h} .selected=${n===h}>before ${h+1}, ${c}</option>`)}
        </select>
      </div>
      ${t?B3.map(c=>i(t,c)):p}`}_looked({target:e}){let{antenna_temperature_k:t}=this.result.reception;e.value===aa?this._edit({antenna_temperature_k:t===null?U3:D3(t)}):this._edit({antenna_view:e.value,antenna_temperature_k:null})}_placed({target:e}){let t=this.request.receiver?.preamplifier??F3;this._edit({preamplifier:e.value===""?null:{...t,before_element:Number(e.value)}})}_changed(e){e.stopPropagation();let t=D(e),n=Object.keys(e.detail.changes).some(a=>a.startsWith("preamplifier"));this._edit(n?{preamplifier:{...this.request.receiver.preamplifier,...t}}:t)}_edit(e){$(this,"jw-line-edit",{kind:"receiver",changes:e})}},D3=s=>Math.max(1,Math.round(s));customElements.define("jw-line-receive",Md);var qd=class extends w({result:m(u),request:m(u),current:{type:Boolean},names:m(u),refused:m(u),compared:m(u),after:m(u),spread:m(u),drawing:{type:Number},failure:{type:String},loadCharts:m(u)}){static styles=[y,T,b`
      :host {
        display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); align-content: start; min-width: 0;
      }
      @media print { .numbers { order: -1; } }
    `];render(){let{result:e}=this;return l`<section><h2 class="unseen">Charts</h2>
        <jw-line-charts .result=${e} .spread=${this.spread} .drawing=${this.drawing} .failure=${this.failure}
          .load=${this.loadCharts}></jw-line-charts>
      </section>
      <section class="panel">
        <h2>What would help <small>more at the antenna, in eight of ten cases between the two figures</small></h2>
        <jw-line-changes .result=${e} .current=${this.current} .compared=${this.compared}
          .after=${this.after}></jw-line-changes>
      </section>
      <section class="panel">
        <h2>On receive</h2>
        <jw-line-receive .request=${this.request} .result=${e} .names=${this.names}
          .refused=${this.refused}></jw-line-receive>
      </section>
      <section class="panel numbers"><h2>All numbers</h2><jw-line-numbers .result=${e}></jw-line-numbers></section>
      <jw-cautions .cautions=${e.cautions}></jw-cautions>`}};customElements.define("jw-line-results",qd);var G3=[1e3,1e4],ar=class{drawing=0;#e;#t;#s=0;constructor(e,t){this.#e=e,this.#t=new pe(e,t)}get result(){return this.#t.result}get error(){return this.#t.error}answered;async begin(e){this.cancel();let t=this.#s;for(let n of G3){if(this.drawing=n,await this.#t.ask({...e,draws:n}),t!==this.#s)return;if(this.#t.status!=="complete")break;this.answered=e}this.drawing=0,this.#e.requestUpdate()}cancel(){this.drawing!==0&&(this.#s++,this.drawing=0,this.#t.cancel(),this.#e.requestUpdate())}};function ir({receiver:s,explain:e,...t}){return t}var rr=class{line;spread;#e;#t;#s;#a=new Map;constructor(e,t){this.line=new pe(e,(n,a)=>t("line",n,a)),this.spread=new ar(e,(n,a)=>t("spread",n,a)),this.#e=new pe(e,(n,a)=>this.#n(n,t("line",n,a)))}follow(e,t=!1){let n=JSON.stringify(e),a=JSON.stringify(ir(e));a!==this.#s&&this.spread.cancel(),t||n!==this.#t?(this.#t=n,this.line.askNext(e)):this.current(e)&&a!==this.#s&&(this.#s=a,this.spread.begin(ir(e)))}giveUp(){this.line.status!=="complete"&&(this.#t=void 0),this.spread.drawing>0&&(this.#s=void 0),this.spread.cancel()}outdate(){this.#t=void 0,this.#a.clear()}drawAgain(e){this.spread.begin(ir(e))}current(e){return this.line.status==="complete"&&JSON.stringify(this.line.answered)===JSON.stringify(e)}get spreadShown(){let{answered:e,result:t}=this.spread;if(!(!e||!this.line.answered))return JSON.stringify(e)===JSON.stringify(ir(this.line.answered))?t:void 0}compare(e){let t=e.map(o=>JSON.stringify(o)),{answered:n,result:a}=this.line;n&&this.#a.set(JSON.stringify(K3(n)),{result:a});let{status:i}=this.#e;e.forEach(({elements:o},d)=>{o.length===0&&this.#a.set(t[d],{problem:"No element yet."})});let r=t.findIndex(o=>!this.#a.has(o));return r!==-1&&i!=="pending"&&this.#e.ask(e[r]),t.map(o=>this.#a.get(o)??{})}async#n(e,t){try{let n=await t;return this.#a.set(JSON.stringify(e),{result:n}),n}catch(n){throw this.#a.set(JSON.stringify(e),{problem:n.message}),n}}},K3=({explain:s,...e})=>e;function G0(s,e,t){return e.filter((n,a)=>a!==t&&n<s).length}var K0=s=>Number(s.toPrecision(3)),Cd={kind:"tuner",network:"t"},V0=(s=142e5)=>[{group:"Line",offers:[{id:"cable",words:"Coaxial cable",element:{kind:"cable",cable:"rg_213",length_m:10}},{id:"wires",words:"Open-wire line",more:"ladder or window line, twin lead",element:{kind:"wires",line:"window_450_stranded",length_m:10}},{id:"section",words:"Transformer section",more:"quarter wave, series section",element:{kind:"section",impedance_ohm:75,length_m:K0(.66*299792458/s/4),velocity_factor:.66}}]},{group:"Connectors",offers:[{id:"joint",words:"Joint",more:"plug in its jack",element:{kind:"joint",family:"n"}},{id:"adapter",words:"Adapter",more:"a joint at either end",element:{kind:"joint",family:"uhf",adapter_to:"n"}}]},{group:"Matching",offers:[{id:"tuner",words:"Tuner",element:Cd},{id:"balun",words:"Balun, 4:1",more:"200 Ω to 50 Ω",element:{kind:"transformer",ratio:4,loss_db:.2,name:"Balun"}},{id:"unun",words:"Unun, 9:1",more:"450 Ω to 50 Ω",element:{kind:"transformer",ratio:9,loss_db:.5,name:"Unun"}},{id:"choke",words:"Choke, 1:1",more:"current balun, common-mode choke",element:{kind:"transformer",ratio:1,loss_db:.1,choking_ohm:1e3,name:"Choke"}}]},{group:"In the line",offers:[{id:"arrester",words:"Arrester",more:"gas tube",element:{kind:"part",what:"arrester",loss_db:.1,vswr:1.1,voltage_limit_v:600}},{id:"switch",words:"Switch",more:"or relay",element:{kind:"part",what:"switch",loss_db:.1,vswr:1.1}},{id:"meter",words:"SWR meter",more:"or bridge",element:{kind:"part",what:"meter",loss_db:.1,vswr:1.05,directivity_db:25}},{id:"attenuator",words:"Attenuator",element:{kind:"part",what:"attenuator",loss_db:3,vswr:1.1,power_limit_w:50}},{id:"filter",words:"Filter",element:{kind:"part",what:"filter",loss_db:.3,vswr:1.2}},{id:"divider",words:"Power divider",element:{kind:"part",what:"divider",loss_db:3.2,vswr:1.2}},{id:"part",words:"Another part",more:"by its data sheet",element:{kind:"part",loss_db:.2}}]}],Y0=(s=142e5)=>({vswr:{kind:"vswr",vswr:2},resonant:{kind:"resonant",resonance_hz:s,vswr:1.2,bandwidth_hz:K0(.03*s)},impedance:{kind:"impedance",resistance_ohm:50,reactance_ohm:0},dummy:{kind:"dummy",vswr:1.1,power_limit_w:300}});var V3={ArrowDown:1,ArrowUp:-1,ArrowRight:1,ArrowLeft:-1},Rd=class extends w({where:{type:String},frequency:m(u),_open:x(u)}){static styles=[y,Ls,b`
      :host { position: relative; }
      .head { display: flex; flex-wrap: wrap; gap: var(--space-1) var(--space-3); align-items: center; }
      #menu {
        position: absolute; z-index: 10; left: 0; right: 0; top: calc(100% + 4px); display: grid;
        gap: var(--space-3) var(--space-4);
        grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); align-items: start;
        padding: var(--space-3); background: var(--card); border: 1px solid var(--edge); border-radius: var(--round);
        box-shadow: 0 8px 28px #0004; scroll-margin: 70px 0;
      }
      h3 { font-size: var(--type-small); color: var(--soft); margin: 0 var(--space-2) var(--space-half); }
      [role='group'] { display: grid; }
      #menu button, #menu .pick {
        display: block; width: 100%; min-height: var(--target); padding: var(--space-1) var(--space-2); border: 0;
        background: none;
        border-radius: 6px; text-align: left; font-size: var(--type-text); line-height: 1.2;
      }
      #menu .pick { align-content: center; justify-items: start; }
      #menu :is(button, .pick):hover { background: var(--sunk); }
      small { display: block; color: var(--soft); font-size: var(--type-fine); }
      @media print { :host { display: none; } }
    `];constructor(){super(),this.where="",this._open=!1,this._elsewhere=e=>{e.composedPath().includes(this)||(this._open=!1)}}connectedCallback(){super.connectedCallback(),window.addEventListener("pointerdown",this._elsewhere)}disconnectedCallback(){super.disconnectedCallback(),window.removeEventListener("pointerdown",this._elsewhere)}render(){return l`<div class="head">
        <button id="add" aria-expanded=${this._open} aria-controls="menu" @click=${this._toggle}>Add…</button>
        <span class="quiet">${this.where}</span>
      </div>
      ${this._open?this._menu():p}`}_menu(){let e=V0(this.frequency);return l`<div id="menu" @keydown=${this._key} @focusout=${this._left}>
      ${e.map(({group:t,offers:n},a)=>l`<div role="group" aria-labelledby="group-${a}">
          <h3 id="group-${a}">${t}</h3>
          ${n.map(({id:i,words:r,more:o,element:d})=>l`<button data-add=${i} @click=${()=>this._add(d)}>${r}${o?l` <small>${o}</small>`:p}</button>`)}
          ${a===e.length-1?l`<label class="pick">Measured file <small>Touchstone, two ports</small>
                  <input id="measured" type="file" accept=".s2p,.ts,.txt" @change=${this._measured}></label>`:p}
        </div>`)}
    </div>`}get _choices(){return[...this.renderRoot.querySelectorAll("#menu :is(button, input)")]}async _toggle(){this._open=!this._open,await this.updateComplete,this._open&&(N(this.renderRoot,"#menu").scrollIntoView({block:"nearest"}),this._choices[0].focus({preventScroll:!0}))}_key(e){e.key==="Escape"&&(e.preventDefault(),e.stopPropagation(),this._close());let t=V3[e.key];if(t===void 0)return;e.preventDefault();let n=this._choices,a=n.indexOf(e.target)+t;n[(a+n.length)%n.length].focus()}_left({relatedTarget:e}){e&&!this.renderRoot.contains(e)&&(this._open=!1)}_close(){this._open=!1,N(this.renderRoot,"#add").focus()}_add(e){this._close(),$(this,"jw-line-add",{element:e})}async _measured(e){let[t]=e.target.files;if(!t)return;let n=t.name.replace(/\.\w+$/,"").slice(0,60);this._add({kind:"measured",touchstone:await t.text(),name:n})}};customElements.define("jw-line-add",Rd);var Nd=["power_limit_w","voltage_limit_v"],J0=["what","name","loss_db","vswr",...Nd],X0={cable:["cable","length_m","name"],wires:["line","length_m","name"],joint:["family","adapter_to","condition","added_resistance_ohm","exposure","name"],tuner:["network","coil_q","capacitor_q","largest_coil_h","largest_capacitor_f","current_limit_a","voltage_limit_v","name"],transformer:["ratio","loss_db","choking_ohm",...Nd,"name"],section:["impedance_ohm","length_m","velocity_factor","loss_db","voltage_limit_v","name"],part:J0,meter:[...J0,"directivity_db"],measured:["name","touchstone",...Nd]},Ld=class extends w({element:m(u),at:{type:Number},count:{type:Number},name:{type:String},reading:m(u),open:{type:Boolean},refused:m(u)},O){static styles=[y,R(z),b`
      article { background: var(--card); border: 1px solid var(--line); border-radius: var(--round); }
      :host([weakest]) article { border: 2px solid var(--ink); }
      .row { display: flex; }
      #handle {
        padding: 0; border: 0; background: none; color: var(--soft); cursor: grab; touch-action: none;
        font-size: var(--type-lead);
      }
      #toggle {
        flex: 1; min-width: 0; display: grid; grid-template-columns: 1.6em minmax(0, 1fr) auto 3.6em;
        gap: 0 var(--space-2);
        align-items: center;
        min-height: 52px; padding: var(--space-1) var(--space-3) var(--space-1) 0;
      }
      .at { color: var(--soft); text-align: right; font-size: var(--type-small); }
      .name { display: block; font-weight: 600; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; }
      .sub { display: block; color: var(--soft); font-size: var(--type-fine); line-height: 1.2; }
      .loss { font-size: var(--type-small); color: var(--soft); white-space: nowrap; }
      .chip { padding: var(--space-half) var(--space-1); }
      .chip.none {
        background: var(--refused); color: var(--refused-ink); font-weight: 500; font-size: var(--type-small);
      }
      .fields {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: var(--space-1) var(--space-3);
        align-items: end;
        padding: var(--space-2) var(--space-3) var(--space-half); background: var(--sunk);
      }
      .acts {
        display: flex; flex-wrap: wrap; gap: var(--space-2); padding: var(--space-1) var(--space-3) var(--space-3);
        background: var(--sunk);
        border-radius: 0 0 var(--round) var(--round);
      }
      .marks { padding: var(--space-2) var(--space-3); font-size: var(--type-small); }
      .whole { padding: 0 var(--space-3) var(--space-2); }
      @media print {
        #handle, .fields, .acts { display: none; }
        #toggle { min-height: 0; padding: var(--space-half) var(--space-1); }
      }
    `];updated(){this.toggleAttribute("weakest",this.reading?.weakest??!1)}render(){return l`<article aria-label="Element ${this.at+1}, ${this.name}">
      <div class="row">
        <button id="handle" class="head" aria-label="Move ${this.name}: drag, or Alt with the up and down arrows"
          @pointerdown=${this._grab}>⠿</button>
        <button id="toggle" class="head" aria-expanded=${this.open} aria-controls="fields"
          @click=${()=>$(this,"jw-line-toggle",{at:this.at})}>
          <span class="at">${this.at+1}</span>
          <span><span class="name">${this.name}</span><span class="sub">${this._sub()}</span></span>
          <span class="loss">${this.reading?W(this.reading.loss):""}</span>
          ${this._chip()}
        </button>
      </div>
      <div id="fields">${this.open?this._form():p}</div>
    </article>`}get focused(){return this.shadowRoot?.activeElement?.id??""}focusOn(e){(this.shadowRoot?.getElementById(e)??N(this.renderRoot,"#toggle")).focus()}_sub(){let{reading:e}=this;if(this.refused)return l`<span class="error">needs a correction</span>`;if(!e)return"…";if(e.refusal)return"refused here";let{kind:t,ratio:n}=this.element,a=e.limited?`limited by ${e.limited}`:"no margin";return[t==="transformer"?`${j(n??1)}:1`:"",a,e.weakest?"weakest":"",e.undecided?"uncertain":"",e.brief,e.marks.length>0?"see note":""].filter(Boolean).join(" · ")}_chip(){let{reading:e}=this;return e?e.refusal?l`<span class="chip none">refused</span>`:e.margin===null?l`<span class="chip none">–</span>`:l`<span class="chip" data-step=${G(e.margin)}>${A(e.margin)}</span>`:l`<span class="chip none">…</span>`}_form(){let{reading:e,refused:t}=this,n=qa(this.element),a=X0[n]??X0.part,i=c=>t&&c===t.field?t.message:"",r=c=>{let h=`${n}.${c}`;return I(this.vocabulary,h,this.vocabulary.valueOf(this.element,h),i(c))},o=t&&!a.includes(t.field),d=e?[e.refusal,...e.says,...e.marks].filter(Boolean):[];return l`${d.map(c=>l`<p class="marks">${c}</p>`)}
      <div class="fields" @jw-change=${this._changed}>${a.map(r)}</div>
      ${o?l`<p class="error whole" role="alert">${t.message}</p>`:p}
      <div class="acts">
        <button id="up" ?disabled=${this.at===0} @click=${()=>this._edit("move",{to:this.at-1})}>Up</button>
        <button id="down" ?disabled=${this.at===this.count-1}
          @click=${()=>this._edit("move",{to:this.at+1})}>Down</button>
        <button id="duplicate" @click=${()=>this._edit("duplicate")}>Duplicate</button>
        <button id="remove" ?disabled=${this.count===1} @click=${()=>this._edit("remove")}>Remove</button>
        <button id="why" ?disabled=${!e}
          @click=${()=>$(this,"jw-line-open",{open:String(this.at)})}>Derivation</button>
      </div>`}_changed(e){e.stopPropagation(),e.detail.live||this._edit("set",{changes:D(e)})}_grab(e){$(this,"jw-line-grab",{at:this.at,pointer:e})}_edit(e,t={}){$(this,"jw-line-edit",{kind:e,at:this.at,...t})}};customElements.define("jw-line-card",Ld);var zd=class extends w({elements:m(u),answered:m(u),result:m(u),names:m(u),refused:m(u),_open:x(u),_drag:x(u)}){static styles=[y,b`
      ol { list-style: none; margin: 0; padding: 0; display: grid; gap: var(--space-2); }
      li { position: relative; }
      li[data-moved] { opacity: 0.5; }
      li[data-before]::before, li[data-after]::after {
        content: ''; position: absolute; left: 0; right: 0; height: 4px; border-radius: 2px; background: var(--focus);
      }
      li[data-before]::before { top: -5px; }
      li[data-after]::after { bottom: -5px; }
      .end { padding: 2px 0 4px 44px; font-size: var(--type-small); color: var(--soft); }
      @media print { ol { gap: 0; } }
    `];constructor(){super(),this._open=-1}willUpdate(e){let{refused:t}=this,n=t?.message===e.get("refused")?.message;e.has("refused")&&t&&!n&&(this._open=t.at)}render(){return l`<p class="end">Transmitter</p>
      <ol @jw-line-toggle=${this._toggled} @jw-line-grab=${this._grabbed} @jw-line-edit=${this._edited}
        @keydown=${this._key}>
        ${this.elements.map((e,t)=>this._row(e,t))}
      </ol>
      <p class="end">Antenna</p>
      <jw-line-add where=${this._open===-1?"before the antenna":`after element ${this._open+1}`}
        .frequency=${this.result?.frequency_hz} @jw-line-add=${this._add}></jw-line-add>`}_row(e,t){let n=i0(this.answered,e,t),a=n===-1||!this.result?void 0:o0(this.result,n),i=this.refused?.at===t?this.refused:void 0,{at:r,to:o}=this._drag??{at:-1,to:-1};return l`<li ?data-moved=${r===t}
      ?data-before=${o===t&&t<r} ?data-after=${o===t&&t>r}>
      <jw-line-card .element=${e} .at=${t} .count=${this.elements.length} .name=${this.names[t]}
        .open=${t===this._open} .reading=${a} .refused=${i}></jw-line-card>
    </li>`}_toggled(e){this._open=this._open===e.detail.at?-1:e.detail.at}_cards(){return[...this.renderRoot.querySelectorAll("jw-line-card")]}async _edited({detail:e,target:t}){let n=t.focused,[a,i]=[e.at,{move:e.to,duplicate:e.at+1,remove:Math.max(e.at-1,0)}[e.kind]];i!==void 0&&(this._open===a&&(this._open=e.kind==="remove"?-1:i),await Promise.resolve(),await this.updateComplete,await this._cards()[i]?.updateComplete,this._cards()[i]?.focusOn(e.kind==="remove"?"toggle":n))}_key(e){let t={ArrowUp:-1,ArrowDown:1}[e.key],n=e.target.closest("jw-line-card");if(!e.altKey||t===void 0||!n)return;e.preventDefault();let a=n.at+t;a>=0&&a<this.elements.length&&$(n,"jw-line-edit",{kind:"move",at:n.at,to:a})}_grabbed({detail:e,target:t}){let{pointer:n,at:a}=e;if(n.button!==0)return;let i=n.currentTarget??n.composedPath()[0];i.setPointerCapture(n.pointerId);let r=this._cards().map(h=>h.getBoundingClientRect()).map(({top:h,height:f})=>h+scrollY+f/2),o=h=>this._drag={at:a,to:G0(h.clientY+scrollY,r,a)},d=h=>{for(let[_,g]of Object.entries(c))i.removeEventListener(_,g);let{to:f}=this._drag??{to:a};this._drag=void 0,h.type==="pointerup"&&f!==a&&$(t,"jw-line-edit",{kind:"move",at:a,to:f})},c={pointermove:o,pointerup:d,pointercancel:d};for(let[h,f]of Object.entries(c))i.addEventListener(h,f)}_add({detail:e}){let t=this._open===-1?this.elements.length:this._open+1;this._open=t,$(this,"jw-line-edit",{kind:"add",at:t,element:e.element})}};customElements.define("jw-line-list",zd);var e1=1e6,Q0=3,Z0="three numbers: frequency in MHz, resistance and reactance in Ω",Y3=([s,e,t])=>({frequency_hz:Number((s*e1).toPrecision(12)),resistance_ohm:e,reactance_ohm:t});function t1(s){let e=s.split(/\r?\n/).map(i=>i.replace(/[#!].*/,"").trim()),t=e.findIndex(i=>i!==""&&Yo([i],Q0).length===0);if(t!==-1)throw new RangeError(`Row ${t+1} is “${e[t]}”; allowed: ${Z0}.`);let n=e.filter(i=>i!=="");if(n.length<2)throw new RangeError(`There ${n.length===1?"is 1 row":"are no rows"}; allowed: at least two, each with ${Z0}.`);let a=Yo(n,Q0);if(a.length===0)throw new RangeError("Some rows have a point and some a comma before the decimals; allowed: one of them in all rows.");return a.map(i=>({...i,value:i.value.map(Y3).sort((r,o)=>r.frequency_hz-o.frequency_hz)}))}var s1=s=>s.map(({frequency_hz:e,resistance_ohm:t,reactance_ohm:n})=>[e/e1,t,n??0].map(hi).join("  ")).join(`
`);var n1=[["vswr","its SWR"],["resonant","its resonance"],["impedance","one impedance"],["table","impedances in a table"],["measured","a measured file"],["dummy","being a dummy load"]],a1={vswr:["load_vswr.vswr","load_vswr.angle_deg"],resonant:["load_resonant.resonance_hz","load_resonant.vswr","load_resonant.bandwidth_hz","load_resonant.bandwidth_vswr"],impedance:["load_impedance.resistance_ohm","load_impedance.reactance_ohm"],measured:["load_measured.touchstone"],dummy:["load_dummy.vswr","load_dummy.power_limit_w"],table:[]},i1={vswr:"An SWR alone says nothing of its phase. With the angle left empty, the answer covers every phase: what is likely, and the worst.",resonant:"A series circuit: resistive at resonance, with this SWR at the edges of the bandwidth."},Pd=class extends w({load:m(u),frequency:m(u),refused:m(u),_way:x(u),_problem:x(u),_readings:x(u)},O){static styles=[y,pi,b`
      .fields {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: var(--space-1) var(--space-3);
        align-items: end;
      }
      label { display: block; font-size: var(--type-small); font-weight: 600; margin-bottom: var(--space-1); }
      textarea {
        width: 100%; min-height: 130px; padding: var(--space-2); font: var(--type-small)/1.4 ui-monospace, monospace;
        color: inherit;
        background: var(--card); border: 1px solid var(--edge); border-radius: var(--round);
      }
      .own { padding-bottom: var(--space-4); }
      .wide { grid-column: 1 / -1; }
      .onpaper { display: none; }
      @media print { .fields { display: none; } .onpaper { display: block; } }
    `];willUpdate(e){!e.has("load")||JSON.stringify(e.get("load"))===JSON.stringify(this.load)||(this._way=this.load.kind,this._problem="",this._readings=[])}render(){let e=n=>this._way===this.load.kind?this.vocabulary.valueOf(this.load,n):"",t=n=>this.refused?.field===n.split(".")[1]?this.refused?.message:"";return l`<p class="onpaper">${this._inWords()}</p>
    <div class="fields" @jw-change=${this._changed}>
      <div class="own">
        <label for="way">Known by</label>
        <select id="way" @change=${this._rechosen}>
          ${n1.map(([n,a])=>l`<option value=${n} .selected=${n===this._way}>${a}</option>`)}
        </select>
      </div>
      ${a1[this._way].map(n=>I(this.vocabulary,n,e(n),t(n)))}
      ${this._way==="table"?this._table():p}
      ${this._way in i1?l`<p class="quiet wide">${i1[this._way]}</p>`:p}
      ${this.refused?.field===""?l`<p class="error wide" role="alert">${this.refused.message}</p>`:p}
    </div>`}_inWords(){let{kind:e}=this.load,t=a1[e].filter(a=>!a.endsWith(".touchstone")),n=a=>`${this.vocabulary.labelOf(a)}: ${this.vocabulary.spoken(a,this.vocabulary.valueOf(this.load,a))}`;return[`Known by ${n1.find(([a])=>a===e)?.[1]}`,...t.map(n)].join(" · ")}_table(){let e=this._problem||(this.refused?.field==="points"?this.refused.message:"");return l`<div class="wide">
      <label for="rows">Rows of frequency in MHz, resistance and reactance in Ω</label>
      <textarea id="rows" spellcheck="false" placeholder="14.0  42  -8"
        aria-invalid=${e?"true":"false"} aria-describedby="rows-under"
        .value=${this.load.points?s1(this.load.points):""} @change=${this._pasted}></textarea>
      <p id="rows-under" class=${e?"error":"quiet"} role=${e?"alert":"note"}>
        ${e||"Paste them from a table or an analyser’s export."}
      </p>
      ${this._readings.length>0?mi("The rows",this._readings,this._meant):p}
    </div>`}_rechosen(e){this._way=e.target.value;let t=Y0(this.frequency)[this._way];t&&this._set(t)}_pasted({target:{value:e}}){this._readings=[];try{let t=t1(e);if(t.length===1)return this._meant(t[0]);this._readings=t;let n=t.map(({words:a})=>a).join(" or ");this._problem=`The rows can be read in more than one way: is one of them ${n}?`}catch(t){this._problem=t.message}}_meant=({value:e})=>{this._readings=[],this._problem="",this._set({kind:"table",points:e})};_changed(e){e.stopPropagation(),this._set({...this._way===this.load.kind?this.load:{kind:this._way},...D(e)})}_set(e){$(this,"jw-line-edit",{kind:"load",load:e})}};customElements.define("jw-line-load",Pd);var Id=["mode","band","frequency_hz","exposure","ambient_temperature_c"],or=["altitude_m","solar_irradiance_w_per_m2","added_sealing","vibration","matings_per_year","service_life_years","transmit_share","on_time_s","off_time_s","system_impedance_ohm","return_loss_asked_db","region"],J3=142e5,Wd=class extends w({request:m(u),refused:m(u),_more:x(u)},O){static styles=[y,b`
      .fields {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: var(--space-1) var(--space-3);
        align-items: end;
      }
      summary {
        cursor: pointer; min-height: var(--target); align-content: center; font-size: var(--type-text);
      }
      .onpaper { display: none; }
      @media (max-width: 420px) { .fields { grid-template-columns: 1fr 1fr; } }
      @media print { .fields, details { display: none; } .onpaper { display: block; } }
    `];willUpdate(e){e.has("refused")&&this.refused&&or.includes(this.refused.field)&&(this._more=!0)}render(){let e=or.filter(t=>this._value(t)!==this.vocabulary.valueOf({},`station.${t}`)).length;return l`<p class="onpaper">${this._inWords()}</p>
      ${this._fields(Id)}
      <details ?open=${this._more} @toggle=${t=>this._more=t.target.open}>
        <summary>More about station and site${e>0?` (${e} set)`:""}</summary>
        ${this._more?this._fields(or):p}
      </details>`}_inWords(){let t=[...Id,...or].filter(a=>Id.includes(a)||this._value(a)!==this.vocabulary.valueOf({},`station.${a}`)).filter(a=>this._value(a)!==null),n=(a,i)=>`${this.vocabulary.labelOf(i)}: ${this.vocabulary.spoken(i,this._value(a))}`;return t.map(a=>n(a,`station.${a}`)).join(" · ")}_value(e){return this.vocabulary.valueOf(this.request,`station.${e}`)}_fields(e){return l`<div class="fields" @jw-change=${this._changed}>${e.map(t=>this._field(t))}</div>`}_field(e){return e==="frequency_hz"&&this.request.band?p:I(this.vocabulary,`station.${e}`,this._value(e),this.refused?.field===e?this.refused.message:"")}_changed(e){if(e.stopPropagation(),e.detail.live)return;let t=D(e);"band"in t&&(t.frequency_hz=t.band===null?this.request.frequency_hz??J3:null),$(this,"jw-line-edit",{kind:"station",changes:t})}};customElements.define("jw-line-station",Wd);var r1=["station.power_w","station.power_is"],X3=["transmitter.behaviour","transmitter.holds_to_vswr"],Bd=class extends w({request:m(u),refused:m(u)},O){static styles=[y,b`
      .fields {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: var(--space-1) var(--space-3);
        align-items: end;
      }
      [name='transmitter.behaviour'] { grid-column: span 2; }
      .tune {
        display: flex; flex-wrap: wrap; gap: var(--space-1) var(--space-3); align-items: center;
        margin-top: var(--space-1);
      }
      .tune p { flex: 1 1 200px; }
      .onpaper { display: none; }
      @media (max-width: 420px) { .fields { grid-template-columns: 1fr 1fr; } }
      @media print {
        .fields, .tune, .quiet { display: none; }
        .onpaper { display: block; }
      }
    `];render(){let e=this._value("station.power_is")==="net",t=e?r1:[...r1,...X3],n=this.request.elements.some(({kind:a})=>a==="tuner");return l`<p class="onpaper">${this._inWords(t)}</p>
      <div class="fields" @jw-change=${this._changed}>${t.map(a=>this._field(a))}</div>
      ${e?l`<p class="quiet">Net power is what the line accepts, whatever its SWR.</p>`:this._usual()}
      ${n?p:l`<div class="tune">
              <button id="tune" @click=${this._tune}>Put a tuner beside it</button>
              <p class="quiet">It finds its own setting on every band.</p>
            </div>`}`}_usual(){let{transmitters:e}=this.vocabulary.lists,t=e.find(({id:n})=>n===this._value("transmitter.behaviour"));return this._value("transmitter.holds_to_vswr")!==null||!t?.holds_to_vswr?p:l`<p class="quiet">As usual: full power up to SWR ${t.holds_to_vswr}.</p>`}_inWords(e){return e.filter(t=>this._value(t)!==null).map(t=>`${this.vocabulary.labelOf(t)}: ${this.vocabulary.spoken(t,this._value(t))}`).join(" · ")}_value(e){let t=e.startsWith("transmitter.")?this.request.transmitter:this.request;return this.vocabulary.valueOf(t,e)}_field(e){let{group:t,field:n,message:a}=this.refused??{};return I(this.vocabulary,e,this._value(e),`${t}.${n}`===e?a:"")}_changed(e){if(e.stopPropagation(),e.detail.live)return;let[t]=Object.keys(e.detail.changes)[0].split(".");$(this,"jw-line-edit",{kind:t,changes:D(e)})}_tune(){$(this,"jw-line-edit",{kind:"add",at:0,element:Cd})}};customElements.define("jw-line-transmitter",Bd);var Hd=class extends w({request:m(u),own:m(u),antenna:{type:String},names:m(u),answered:m(u),result:m(u),refused:m(u)},O){static styles=[y,T,b`
      :host {
        display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); align-content: start; min-width: 0;
      }
      .list { padding: var(--space-3) var(--space-2); }
      .list h2 { padding-left: var(--space-2); }
      .keep { font-size: var(--type-small); }
      @media print { .keep { display: none; } }
    `];render(){let{request:e}=this,t=this.own.filter(a=>a!=="load"&&a!=="transmitter"),n=a=>this.refused?.group===a?this.refused:void 0;return l`<section class="panel">
        <h2>Station and site</h2>
        ${this._ownOf(t,t.map(a=>this.vocabulary.labelOf(`station.${a}`)).join(", "))}
        <jw-line-station .request=${e} .refused=${n("station")}></jw-line-station>
      </section>
      <section class="panel">
        <h2>The transmitter</h2>
        ${this._ownOf(["transmitter"],"its behaviour at a bad SWR")}
        <jw-line-transmitter .request=${e}
          .refused=${n("station")??n("transmitter")}></jw-line-transmitter>
      </section>
      <section class="panel list">
        <h2>The line <small>loss, and margin in dB</small></h2>
        <jw-line-list .elements=${e.elements} .names=${this.names} .answered=${this.answered}
          .result=${this.result} .refused=${n("elements")}></jw-line-list>
      </section>
      <section class="panel">
        <h2>The antenna <small>${this.own.includes("load")?p:this.antenna}</small></h2>
        ${this._ownOf(["load"],"antenna")}
        <jw-line-load .load=${e.load} .frequency=${this.result?.frequency_hz}
          .refused=${n("load")}></jw-line-load>
        ${this.own.includes("load")?l`<button class="keep" id="keep-antenna"
                @click=${()=>$(this,"jw-line-edit",{kind:"keep-antenna"})}>Make it the station’s</button>`:p}
      </section>`}_ownOf(e,t){let n=e.filter(a=>this.own.includes(a));return l`<jw-own of="This line" what=${n.length>0?t:""}
      @jw-leave=${()=>$(this,"jw-line-edit",{kind:"leave",names:n})}></jw-own>`}};customElements.define("jw-line-editor",Hd);var Dd=(s,e,t)=>s.map((n,a)=>a===e?t:n),Q3=(s,e)=>{let t={...Re(s),request:e};return{...s,lines:Dd(s.lines,s.current,t)}};function Fd(s,e,t){let{preamplifier:n}=s.receiver??{};if(!n)return{...s,elements:e};let a=t.indexOf(n.before_element),{preamplifier:i,...r}=s.receiver;return a!==-1&&(r.preamplifier={...n,before_element:a}),{...s,elements:e,receiver:r}}var o1=(s,e)=>Fd(s,e.map(t=>s.elements[t]),e),Ud=s=>s.elements.map((e,t)=>t),l1={set:(s,{at:e,changes:t})=>({...s,elements:Dd(s.elements,e,mt({...s.elements[e],...t}))}),add:(s,{at:e,element:t})=>s.elements.length>=Wa?s:Fd(s,s.elements.toSpliced(e,0,t),Ud(s).toSpliced(e,0,void 0)),duplicate:(s,{at:e})=>l1.add(s,{at:e+1,element:s.elements[e]}),remove:(s,{at:e})=>s.elements.length===1?s:o1(s,Ud(s).toSpliced(e,1)),move:(s,{at:e,to:t})=>t<0||t>=s.elements.length||t===e?s:o1(s,Ud(s).toSpliced(e,1).toSpliced(t,0,e)),change:(s,{edits:e})=>{let t=s.elements.map((n,a)=>({element:n,from:a}));for(let{at:n,element:a,insert:i}of e.toSorted((r,o)=>o.at-r.at))t.splice(n,i?0:1,...a===null?[]:[{element:a,from:i?void 0:n}]);return Fd(s,t.map(n=>n.element),t.map(n=>n.from))},load:(s,{load:e})=>({...s,load:mt(e)}),leave:(s,{names:e})=>Object.fromEntries(Object.entries(s).filter(([t])=>!e.includes(t))),transmitter:(s,{changes:e})=>({...s,transmitter:mt({...s.transmitter,...e})}),receiver:(s,{changes:e})=>({...s,receiver:mt({...s.receiver,...e})})},Z3=({request:s})=>JSON.stringify(s)===JSON.stringify(Ia.request),lr={choose:(s,{line:e})=>({...s,current:e}),rename:(s,{name:e})=>({...s,lines:Dd(s.lines,s.current,{...Re(s),name:e})}),insert:(s,{lines:e})=>{let t=[...s.lines,...e.slice(0,Math.max(As-s.lines.length,0))];return{lines:t,current:Math.min(s.lines.length,t.length-1)}},empty:s=>{let e={name:"New line",request:{elements:[]}};return s.lines.length===1&&Z3(Re(s))?{lines:[e],current:0}:lr.insert(s,{lines:[e]})},keep:s=>lr.insert(s,{lines:[e4(s)]}),drop:(s,{line:e})=>{if(s.lines.length===1)return s;let t=s.current>e||s.current===s.lines.length-1?s.current-1:s.current;return{lines:s.lines.toSpliced(e,1),current:Math.max(t,0)}}};function e4(s){let{name:e,request:t}=Re(s),n=e.replace(/ \d+$/,""),a=new Set(s.lines.map(r=>r.name)),i=2;for(;a.has(`${n} ${i}`);)i++;return{name:`${n} ${i}`,request:t}}function en(s,e){if(e.kind in lr)return lr[e.kind](s,e);let{request:t}=Re(s),n=l1[e.kind](t,e);return n===t?s:Q3(s,n)}var d1={format:"jointwise lines",version:1,key:"lines"},c1=s=>qi(d1,s),u1=(s,e)=>Ci(d1,s,t=>Ba(t,e));var Gd=class extends w({lines:m(u),current:{type:Number}}){static styles=[y,b`
      div { display: flex; flex-wrap: wrap; gap: var(--space-2); align-items: end; }
      .names { flex: 1 1 280px; flex-wrap: nowrap; }
      .names > label { flex: 1 1 120px; max-width: 280px; }
      label > span { display: block; font-size: var(--type-small); font-weight: 600; margin-bottom: var(--space-1); }
      @media print { :host { display: none; } }
    `];render(){return l`<div>
      <div class="names">
        ${this.lines.length>1?this._lines():p}
        <label><span>Name of this line</span><input id="name" maxlength="60" autocomplete="off"
          .value=${this.lines[this.current].name} @change=${this._renamed}></label>
      </div>
      <div>
        <button id="keep" ?disabled=${this.lines.length>=As}
          @click=${()=>this._edit({kind:"keep"})}>Compare with a copy</button>
        <button id="empty" ?disabled=${this.lines.length>=As}
          @click=${()=>this._edit({kind:"empty"})}>Start empty</button>
      </div>
    </div>`}_lines(){return l`<label><span>Line</span><select id="lines" @change=${t=>this._edit({kind:"choose",line:Number(t.target.value)})}>
      ${this.lines.map(({name:t},n)=>l`<option value=${n} .selected=${n===this.current}>${t}</option>`)}
    </select></label>`}_renamed({target:e}){let t=e.value.trim();t?this._edit({kind:"rename",name:t}):e.value=this.lines[this.current].name}_edit(e){$(this,"jw-line-edit",e)}};customElements.define("jw-line-bar",Gd);var Kd=class extends w({lines:m(u),current:{type:Number},known:m(u)}){static styles=[y,T,R(z),b`
      .scroll { position: relative; overflow-x: auto; }
      .plain :is(td, th) { vertical-align: middle; }
      .plain thead th { white-space: normal; vertical-align: bottom; }
      tr[aria-current] th { border-left: 4px solid var(--accent); padding-left: var(--space-2); }
      td { white-space: nowrap; }
      td small { display: block; color: var(--soft); }
      @media print { button { display: none; } }
    `];render(){return l`<section class="panel"><h2>Lines kept</h2>
      <div class="scroll" tabindex="0" role="group" aria-label="Kept lines"><table class="plain">
      <thead>
        <tr>
          <th scope="col">Line</th><th scope="col" class="number">Smallest margin</th><th scope="col">Band</th>
          <th scope="col" class="number">At the antenna</th><th scope="col" class="number">Loss</th>
          <th scope="col" class="number">SWR</th><th scope="col">Weakest part</th>
          <th><span class="unseen">Choose</span></th>
        </tr>
      </thead>
      <tbody>
        ${this.lines.map((e,t)=>this._row(e,t))}
      </tbody>
    </table></div></section>`}_row({name:e},t){let n=t===this.current;return l`<tr data-line=${t} aria-current=${n?"true":p}>
      <th scope="row">${e}</th>
      ${this._numbers(this.known[t]??{})}
      <td>
        <button ?disabled=${n} aria-label=${n?p:`Show ${e}`}
          @click=${()=>$(this,"jw-line-edit",{kind:"choose",line:t})}>${n?"shown":"Show"}</button>
        <button aria-label="Drop ${e}" ?disabled=${this.lines.length===1}
          @click=${()=>$(this,"jw-line-edit",{kind:"drop",line:t})}>Drop</button>
      </td>
    </tr>`}_numbers({result:e,problem:t}){if(!e)return l`<td colspan="6" class="quiet">${t??"Calculating…"}</td>`;let n=e.margin_db,a=ms(e),i=r=>{let o=a.find(d=>d.id===r);return l`<td class="number">
        ${o?l`${o.likely} <small>${zt.toLowerCase()} ${o.worst}</small>`:"–"}
      </td>`};return l`<td class="number">
        ${n===null?"none":l`<span class="chip" data-step=${G(n)}>${A(n)} dB</span>`}
      </td>
      <td>${e.column.name}</td>
      ${i("delivered")}${i("loss")}${i("swr")}
      <td>${e.weakest===null?"–":e.parts[e.weakest].name}</td>`}};customElements.define("jw-line-compare",Kd);var Vd="methods";function Yd(s,e){let t=s===null||s===""?NaN:Number(s);return Number.isInteger(t)&&t>=0&&t<e?t:void 0}function h1(s,e){if(s===Vd)return"Method";let t=Yd(s,e.length);return t===void 0?"":`Element ${t+1}: ${e[t]}`}function t4(s){let e=s?.field??"",t=/^elements\[(\d+)\](?:\.(\w+))?/.exec(e);if(t)return{group:"elements",at:Number(t[1]),field:t[2]??""};let[n,...a]=e.split(".");return n==="load"?{group:n,field:(a[0]??"").replace(/\[.*/,"")}:n==="transmitter"?{group:n,field:a[0]??""}:n==="receiver"?{group:a.length>1?a[0]:n,field:a.at(-1)??""}:{group:e===""?"":"station",field:e}}var p1=s=>s&&{...t4(s),message:s.message};var m1=b`
  jw-line-answer, .waiting { order: -1; }
  .wide { order: -2; }
  @media screen and (max-width: 1179px) { jw-line-bar.wide { order: 0; } }
  @media (min-width: 1180px) {
    main { grid-template-columns: minmax(400px, 30%) minmax(0, 1fr); grid-template-rows: auto; }
    .wide { grid-column: 1 / -1; }
    jw-line-editor { grid-column: 1; grid-row: span 2; }
    jw-line-answer, jw-line-results, .waiting { grid-column: 2; order: 0; }
  }
  @media (min-width: 1280px) and (max-width: 1800px) {
    :host([beside]) main { grid-template-columns: minmax(0, 1fr); }
    :host([beside]) :is(jw-line-editor, jw-line-answer, jw-line-results, .waiting) { grid-column: 1; grid-row: auto; }
    :host([beside]) jw-line-answer { order: -1; }
  }
  @media print {
    main, :host([beside]) main {
      padding: 0; gap: 2mm; grid-template-columns: 78mm minmax(0, 1fr); grid-template-rows: auto;
    }
    jw-line-editor { grid-column: 1; }
    jw-line-answer { grid-column: 2; order: 0; }
    jw-line-results, .wide { grid-column: 1 / -1; }
    .trouble { display: none; }
    h2.onpaper { display: block; font-size: var(--type-lead); margin: 0; }
  }
`;function f1(s,e){let t=JSON.stringify(e.request),n=s.lines.findIndex(({request:a})=>JSON.stringify(a)===t);return n===-1?{kind:"insert",lines:[e]}:{kind:"choose",line:n}}var s4=`This line is too long for a link (over ${La} characters); export it as a file instead.`,ia=class extends w({loadCharts:m(u),_open:x(u),_said:x(u),_change:x(u)},Ot){static view="line";static ownNames=["line","name","open"];static styles=[y,T,Rn,m1];_document=u;constructor(){super(),this._open=null,this._said="",this._told="",this._answers=new rr(this,(e,t,n)=>this._call(e,t,n)),this._catalogue=this._enquiry("catalogue")}_begin(){this._document=new ve(Fe,V,this.vocabulary.fields,ht),this._document.attach(this,()=>{this._notice({text:"Your lines were changed in another tab; they are shown here now."}),this._settle()})}disconnectedCallback(){this._answers.giveUp(),super.disconnectedCallback()}get _own(){return this._document.present}_askAnew(){super._askAnew(),this._answers.outdate()}set _own(e){this._document.put(e)}_turned({from:e,to:t}){return this._document.turned(e,t)}updated(e){if(this.toggleAttribute("beside",this._open!==null),this.transport===void 0)return;this._isEmpty||this._answers.follow(this._request),(e.has("_open")||e.has("transport"))&&this._open!==null&&["initial","error"].includes(this._catalogue.status)&&this._catalogue.ask({})}render(){let{lines:e,current:t}=this._own,{line:n,spread:a,spreadShown:i}=this._answers,{name:r,request:o}=this._current,d=this._whole(o),c=s0(d,this.vocabulary.lists),h=p1(n.error),f=h1(this._open,c),_=this._answers.current(this._request),g=this._change&&n.result?.changes.find(({title:E})=>E===this._change?.title),[v,...k]=this._toldOf(e,g),S=h?`Out of date: these are the numbers before the last change. ${h.message}`:"";return l`<div @jw-line-edit=${this._edited}
        @jw-line-open=${({detail:E})=>this._show(E.open)} @jw-close=${()=>this._show(null)}
        @jw-line-compare=${({detail:E})=>this._change=E.change} @jw-line-take=${this._taken}
        @jw-line-spread=${({detail:E})=>E.begin?this._answers.drawAgain(n.answered):a.cancel()}>
      ${this._progress(n)}
      <main>
        <h2 class="onpaper wide">${r}</h2>
        <jw-line-bar class="wide" .lines=${e} .current=${t}></jw-line-bar>
        ${h?.group===""?this._trouble(h.message):p}
        ${e.length>1?this._compared(e,t,k):p}
        <jw-line-editor antenna=${Fa(this.station)?.name??""} .request=${d}
          .own=${Nm(o,this.station,this.vocabulary)} .names=${c}
          .answered=${n.answered} .result=${n.result} .refused=${h}></jw-line-editor>
        ${this._isEmpty?l`<p class="waiting empty quiet" role="status">
                Nothing stands between transmitter and antenna yet: add the first element of the line.
              </p>`:n.result?l`<jw-line-answer .result=${n.result} .answered=${n.answered} .open=${this._open??""}
                .outdated=${S}></jw-line-answer>
              <jw-line-results .result=${n.result} .request=${d} .current=${_} .names=${c}
              .refused=${h} .compared=${g} .after=${v} .spread=${i} .drawing=${a.drawing}
              .failure=${a.error?.message??""} .loadCharts=${this.loadCharts}></jw-line-results>`:l`<p class="waiting ${h?"error":"quiet"}" role="status">
                ${h?.message??"Calculating…"}
              </p>`}
      </main>
      <p class="unseen" role="status">${this._said}</p>
      <jw-sheet .heading=${f}>${f?this._detail(_):p}</jw-sheet>
    </div>`}_detail(e){let{answered:t,result:n}=this._answers.line;return l`<jw-line-detail .element=${this._explained} .answered=${t} .result=${n}
      .current=${e} .catalogue=${this._catalogue.result} .error=${this._catalogue.error}></jw-line-detail>`}_trouble(e){return l`<p class="trouble wide" role="alert">${e} <button @click=${()=>this._answers.follow(this._request,!0)}>Try again</button></p>`}_toldOf(e,t){let n=e.length>1?e.map(({request:i})=>this._whole(i)):[];if(!this.transport)return[{}];if(!t)return[{},...this._answers.compare(n)];let a=en(this._own,{kind:"change",edits:t.edits});return this._answers.compare([this._whole(Re(a).request),...n])}_compared(e,t,n){return l`<jw-line-compare class="wide" .lines=${e} .current=${t} .known=${n}></jw-line-compare>`}get _isEmpty(){return this._current.request.elements.length===0}get _current(){return Re(this._own)}get _explained(){return Yd(this._open,this._current.request.elements.length)}get _request(){let e=this._whole(this._current.request);return this._explained===void 0?e:{...e,explain:this._explained}}_whole(e){return wt(e,this.station,this.vocabulary)}_edit(e){let{own:t,changes:n}=this._parted(e);this._put(t,n,{isStep:e.kind!=="choose",isEntry:!1})}_parted(e){let t=this._own,{request:n}=Re(t);if(e.kind==="transmitter"){let r={...Da(this.station),...n.transmitter,...e.changes};return{own:en(t,{...e,changes:r})}}if(e.kind==="load"&&!n.load&&this._isStationsVswr(e.load))return{own:t,changes:{settings:this._settings({vswr:e.load.vswr})}};if(e.kind==="keep-antenna")return this._withAntenna();if(e.kind!=="station")return{own:en(t,e)};let a=Object.keys(e.changes);return{own:a.some(r=>r in n)?en(t,{kind:"leave",names:a}):t,changes:{settings:this._settings(e.changes)}}}_withAntenna(){let{name:e,request:t}=this._current,n=gi(this.station,"antennas",{name:`Antenna of ${e}`.slice(0,60),load:t.load}),a=this.station.antennas.length;return{own:en(this._own,{kind:"leave",names:["load"]}),changes:{...n,...bi({...this.station,...n},"antennas",a)}}}_isStationsVswr(e){let{vswr:t,...n}=this._whole(this._current.request).load,{vswr:a,...i}=e,{max:r}=this.vocabulary.fieldOf("settings.vswr");return t!==void 0&&a<=r&&JSON.stringify(n)===JSON.stringify(i)}_edited({detail:e}){this._change=void 0,this._edit(e),e.kind==="move"&&(this._said=`Moved to place ${e.to+1}.`),e.kind==="keep"&&(this._said="A copy is kept and shown."),this._settle()}_settle(){this._open!==Vd&&this._explained===void 0&&(this._open=null),this._address(!0),this._tellTrouble(),this.requestUpdate()}_taken({detail:{change:e}}){this._edited({detail:{kind:"change",edits:e.edits}}),this._said=`${e.title}: done; Undo takes it back.`}_show(e){e!==this._open&&(this._open=e,this._address(!1))}get _fragment(){return Kn(this._current,this._open).fragment}_restore(e,t){let{line:n,open:a,problem:i}=Ki(e,this.vocabulary.fields);return this._open=a,n&&!t&&this._edit(f1(this._own,n)),this._settle(),{text:i}}_tellTrouble(){let{problem:e,spoilt:t}=this._document;if(e===this._told)return;this._told=e;let n=t&&{words:"Save them",run:()=>K("jointwise-lines-unread.txt","text/plain",t)};this._notice(e&&{text:e,action:n})}turn(e){let t=super.turn(e);return t&&(this._said=e==="undo"?"Undone.":"Done again."),this._settle(),t}get ways(){let[e,t]=super.ways;return[{...e,run:()=>this._link()},{id:"export",words:"Save all lines",run:()=>qs("jointwise-lines.json",c1(this._own.lines))},{id:"import",words:"Open saved lines",take:n=>this._bringIn(n),accept:".json,application/json"},t]}async _link(){Kn(this._current,null).whole?await this._copyLink():this._notice({text:s4})}async _bringIn(e){try{this._edited({detail:{kind:"insert",lines:u1(await e.text(),this.vocabulary.fields)}})}catch(t){if(!(t instanceof RangeError))throw t;this._notice({text:`${e.name} is refused: ${t.message} Nothing was changed.`})}}};customElements.define("jw-line-view",ia);var n4={"":"as the site",indoor:"indoors",sheltered:"outdoors, sheltered",exposed:"outdoors, exposed",immersed:"under water"},fs={label:"Your name for it"},Jd={label:"Length",unit:"m"},dr={power_limit_w:{label:"Rated average power",empty:"not checked"},voltage_limit_v:{label:"Rated peak voltage",empty:"not checked"}},a4={factor:1e-12,unit:"pF"},i4={factor:1e-6,unit:"µH"},r4={name:fs,what:{label:"What it is",options:{arrester:"arrester",switch:"switch or relay",meter:"SWR meter",attenuator:"attenuator",filter:"filter",divider:"power divider",other:"another part"}},loss_db:{label:"Loss"},vswr:{label:"SWR of the part"},...dr},ue=(s,e)=>Object.fromEntries(Object.entries(e).map(([t,n])=>[`${s}.${t}`,n])),g1=({bands:s,cables:e,families:t,transmitters:n,noise_environments:a,antenna_views:i,wire_lines:r})=>({...ue("cable",{cable:{label:"Cable",entries:e},length_m:Jd,name:fs}),...ue("wires",{line:{label:"Open-wire line",entries:r},length_m:Jd,name:fs}),...ue("joint",{family:{label:"Connector",entries:je(t)},adapter_to:{label:"Adapter to",options:fe("no adapter",je(t))},exposure:{label:"Weather here",options:n4},name:fs}),...ue("tuner",{network:{label:"Network",options:{l:"L (two parts)",t:"T (high pass)",pi:"pi (low pass)"}},coil_q:{label:"Q of the coil"},capacitor_q:{label:"Q of the capacitors"},largest_capacitor_f:{label:"Largest capacitor",...a4,empty:"as usual"},largest_coil_h:{label:"Largest coil",...i4},voltage_limit_v:{label:"Capacitors, rated peak voltage",empty:"not checked"},current_limit_a:{label:"Coil, rated current (rms)",empty:"not checked"},name:fs}),...ue("transformer",{ratio:{label:"Ratio, antenna : radio",unit:": 1"},loss_db:{label:"Loss"},choking_ohm:{label:"Choking impedance"},...dr,name:fs}),...ue("section",{impedance_ohm:{label:"Impedance"},length_m:Jd,velocity_factor:{label:"Velocity factor"},loss_db:{label:"Loss"},voltage_limit_v:dr.voltage_limit_v,name:fs}),...Object.assign({},...["part",...Sn].map(o=>ue(o,r4))),"arrester.voltage_limit_v":{label:"Fires at (peak voltage)",empty:"not checked"},"meter.directivity_db":{label:"Directivity",empty:"not known"},...ue("measured",{touchstone:{label:"Touchstone file, two ports"},...dr,name:{label:"What it is"}}),...ue("load_vswr",{vswr:{label:"SWR of the antenna"},angle_deg:{label:"Angle of its reflection",empty:"unknown"}}),...ue("load_resonant",{resonance_hz:{label:"Resonance",factor:1e6,unit:"MHz"},vswr:{label:"SWR at resonance"},bandwidth_hz:{label:"Bandwidth",factor:1e3,unit:"kHz"},bandwidth_vswr:{label:"SWR at its edges"}}),...ue("load_impedance",{resistance_ohm:{label:"Resistance"},reactance_ohm:{label:"Reactance"}}),...ue("load_measured",{touchstone:{label:"Touchstone file, one port"}}),...ue("load_dummy",{vswr:{label:"SWR of the dummy load"},power_limit_w:{label:"Rated average power",empty:"not checked"}}),...ue("transmitter",{behaviour:{label:"At a bad SWR",entries:n},holds_to_vswr:{label:"Full power up to SWR",empty:"as usual"}}),...ue("station",{power_w:{label:"Transmitter power"},band:{label:"Band",options:fe("spot frequency",s)},frequency_hz:{label:"Spot frequency",factor:1e6,unit:"MHz"}}),...ue("receiver",{noise_figure_db:{label:"Receiver noise figure"},environment:{label:"Noise around the antenna",entries:a},antenna_view:{label:"Where the antenna points",entries:i},elevation_deg:{label:"Elevation of its beam"},antenna_temperature_k:{label:"Noise temperature of the antenna"}}),...ue("preamplifier",{before_element:{label:"Preamplifier"},gain_db:{label:"Its gain"},noise_figure_db:{label:"Its noise figure"}})});var b1={id:ia.view,label:"Line",description:"What reaches the antenna through your line, where the loss goes, and which part is weakest.",fields:ji,words:g1,element:({transport:s,stage:e,loadCharts:t})=>l`<jw-line-view class="view" .transport=${s} .stage=${e} .loadCharts=${t}></jw-line-view>`};var gs="asked",cr={family:"uhf",band:"20m",frequency_hz:null};function Xd({family:s,band:e,frequency_hz:t}){return s!==null&&(e!==null||t!==null)?{family:s,band:e,frequency_hz:t}:void 0}function o4(s,e,t){if(s.includes(e)||s.length<t)return _e(s,e);let n=In(s,e);return _e(s.filter(a=>a!==n),e)}function _1(s,e,t,n,a){let i=s.band?{frequency_hz:null}:s.frequency_hz?{band:null}:{},r={...e,...s,...i,view:gs},{family:o,band:d,frequency_hz:c,power_w:h=t.power_w}=r;return d!==null&&!t.bands.includes(d)&&(r.bands=n.bands.map(({id:f})=>f).filter(f=>f===d||t.bands.includes(f))),c!==null&&(r.frequencies_hz=_e(t.frequencies_hz,c)),t.families!==null&&!t.families.includes(o)&&(r.families=[...t.families,o]),{...r,powers_w:o4(t.powers_w,h,a)}}var l4=s=>({type:"choice",choices:s,nullable:!0,default:null}),w1=({requests:{cell:s,matrix:e},first_bands:t},{powers_w:n})=>({matrix:{...s,...e,bands:{...e.bands,default:t},powers_w:{...e.powers_w,default:n},shows:{type:"choice",choices:["margin","largest"],default:"margin",nullable:!1},view:l4(["methods","website",gs])}});var at=class extends Error{constructor({detail:e,field:t,value:n,allowed:a}){super(e),this.name="Refusal",this.field=t,this.value=n,this.allowed=a}};var tn=class extends at{constructor(e){super({detail:e}),this.name="Unreachable"}},ra=s=>s?.name==="Unreachable";var d4=new Set(["families","bands","frequencies_hz","powers_w"]),y1=Object.keys(H.requests.matrix),v1=y1.filter(s=>!d4.has(s)),$1=["family","band","frequency_hz","power_w"],Qd=(s,e)=>Object.fromEntries(e.filter(t=>s[t]!==null).map(t=>[t,s[t]]));function Ie(s,e){return{...Qd(s,y1),bands:as(s,e)}}function oa(s){if(!(s.family===null||s.band===null&&s.frequency_hz===null))return Qd(s,[...v1,...$1])}var Zd=(s,e)=>Qd({...s,...e},[...v1,...$1]);function ur(s){if(s.view!==gs)return s.view!==null?s.view:oa(s)?"derivation":s.family!==null?"family":s.band===null&&s.frequency_hz===null?void 0:"band"}var bs={view:null,family:null,band:null,frequency_hz:null};function x1(s,e,t){let{first:n,isPacked:a,lists:i}=t,r=JSON.stringify(Ie(s,t))===JSON.stringify(Ie(n.matrix,t));if(e||r&&!a)return H.matrix;let o=new Set(as(s,t));return{families:i.families.filter(({id:d})=>s.families===null||s.families.includes(d)),columns:i.bands.filter(({id:d})=>o.has(d)),powers_w:s.powers_w}}var ec=s=>s.low_hz!==void 0&&s.low_hz===s.high_hz;function sn(s,e){if(s.band!==null)return e.columns.find(({id:t})=>t===s.band);if(s.frequency_hz!==null)return e.columns.find(t=>ec(t)&&t.low_hz===s.frequency_hz)}function tc(s,e){let t=oa(e);return t!==void 0&&["family","band","frequency_hz"].every(n=>s[n]===t[n])}function k1(s,e,t,{bands:n,families:a}){let i=(o,d)=>o.find(c=>c.id===d)?.name??d,r=sn(e,t)?.name??i(n,e.band)??`${e.frequency_hz} Hz`;switch(s){case"methods":return"Method";case"website":return"Put this on your website";case"family":return i(a,e.family);case"band":return`All limits on ${r}`;case"derivation":return`${i(a,e.family)} on ${r}`}return""}var pr="club-matrix.json",la="embed.js";var c4=s=>`"${String(s).replaceAll("&","&amp;").replaceAll('"',"&quot;").replaceAll("<","&lt;")}"`;function hr(s,e){let n=Object.entries(e).filter(([,a])=>a!==""&&a!==!1).map(([a,i])=>i===!0?` ${a}`:` ${a}=${c4(i)}`);return`<${s}${n.join("")}></${s}>`}var u4='<script>addEventListener("message",e=>{for(const f of document.querySelectorAll("iframe"))if(f.contentWindow===e.source&&e.data&&e.data.type==="jointwise-height")f.height=e.data.height})<\/script>';function S1(s,{server:e,fragment:t,page:n,theme:a,lang:i,compact:r,rows:o,columns:d}){let c={theme:a==="auto"?"":a,lang:i,compact:r},h=t?`${e}#${t}`:e,f=k=>hr("script",{src:k});switch(s){case"files":return f(la)+hr("jointwise-matrix",{src:pr,size:`${o}x${d}`,link:n,...c});case"server":return f(new URL(la,e).href)+hr("jointwise-matrix",{link:h,...c})}let _=new URL("embed.html",e),g=Object.entries(c).filter(([,k])=>k).map(([k,S])=>[k,S===!0?"":String(S)]);_.search=String(new URLSearchParams(g)),_.hash=t;let v=460+o*(r?28:46);return hr("iframe",{src:_.href,title:"Power margins of coaxial joints",width:"100%",height:v,loading:"lazy"})+u4}var mr=[["files","Two files","Save both files, put them into the folder of your web page, and paste the line into the page."],["server","This server","Paste the line; this server answers your visitors, so they must be able to reach it."],["frame","A frame","For sites that take no script: paste the line; where even its last part is refused, the height stays as given."]],h4=[["auto","as the web page"],["light","light"],["dark","dark"]],p4=[["","as the web page"],["en","English"],["de","Deutsch"]],m4=({protocol:s,hostname:e})=>s.startsWith("http")&&!/^(localhost|127\.|\[::1\])/.test(e),sc=class extends w({state:m(u),power:{type:Number},transport:m(u),loadEmbed:m(u),_way:x(u),_look:x(u),_script:x(u),_failed:x(u)},me){static styles=[y,b`
      :host > * + * { margin-top: var(--space-4); }
      .ways { display: flex; flex-wrap: wrap; gap: var(--space-2); }
      .choices {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(190px, 1fr)); gap: var(--space-3) var(--space-4);
        align-items: end;
      }
      label { display: grid; gap: var(--space-1); font-size: var(--type-small); }
      label:has([type='checkbox']) {
        display: flex; gap: var(--space-3); align-items: center; min-height: var(--target);
      }
      input[type='checkbox'] { width: 22px; height: 22px; }
      .wide { grid-column: 1 / -1; }
      textarea {
        width: 100%; min-height: 7.5rem; padding: var(--space-3); font: var(--type-small)/1.45 ui-monospace, monospace;
        color: inherit;
        resize: vertical;
        background: var(--sunk); border: 1px solid var(--edge); border-radius: var(--round); overflow-wrap: anywhere;
      }
      .acts { display: flex; flex-wrap: wrap; gap: var(--space-2); }
      .preview { min-height: 320px; }
    `];constructor(){super(),this._way="files",this._look={theme:"auto",lang:"",compact:!1,page:m4(location)?this._server:""},this._snapshot=new pe(this,(e,t)=>this.transport.ask("snapshot",e,t))}firstUpdated(){this.loadEmbed().then(e=>this._script=e,e=>this._failed=e.message)}updated(e){let t={...Ie(this.state,this.vocabulary),power_w:this.power},n=JSON.stringify(t);(n!==this._asked||e.get("transport"))&&this._snapshot.askNext(t),this._asked=n}render(){let e=location.protocol.startsWith("http")?mr:mr.slice(0,1),[,,t]=mr.find(([n])=>n===this._way)??mr[0];return l`<p>The matrix as it is set now, with every derivation, on a page of your own. Each cell opens there as
    it does here.</p>
      <div class="ways" role="group" aria-label="How it is brought in">
        ${e.map(([n,a])=>l`<button data-way=${n} aria-pressed=${n===this._way}
              @click=${()=>this._way=n}>${a}</button>`)}
      </div>
      <p class="quiet">${t}</p>
      <div class="choices">
        ${this._select("theme","Colours",h4)} ${this._select("lang","Language",p4)}
        <label><input id="site-compact" type="checkbox" .checked=${this._look.compact}
          @change=${({target:n})=>this._set("compact",n.checked)}>Compact: numbers only</label>
        ${this._way==="files"?l`<label class="wide">Where the full page lies for your visitors; empty for nowhere
              <input id="site-page" placeholder="jointwise.html" .value=${this._look.page}
                @input=${({target:n})=>this._set("page",n.value.trim())}></label>`:p}
      </div>
      ${this._made()}`}_select(e,t,n){return l`<label>${t}
      <select id="site-${e}" @change=${({target:a})=>this._set(e,a.value)}>
        ${n.map(([a,i])=>l`<option value=${a} ?selected=${a===this._look[e]}>${i}</option>`)}
      </select></label>`}_set(e,t){this._look={...this._look,[e]:t}}get _server(){return location.origin+location.pathname}_made(){let{result:e,error:t}=this._snapshot,n=this._failed??(t&&Ca(t,this.vocabulary,"snapshot",{}));if(n)return l`<p class="error" role="alert">${n}</p>`;if(!e||!this._script)return l`<p class="preview" role="status">Calculating…</p>`;let a={name:this.station.name,date:new Date().toISOString().slice(0,10)},i=JSON.stringify({...e,station:a}),{families:r,columns:o}=e.matrix,d=Xe({...this.state,...bs,power_w:this.power},this.vocabulary.first.matrix),c=S1(this._way,{...this._look,server:this._server,fragment:d,rows:r.length,columns:o.length}),{theme:h,lang:f,compact:_,page:g}=this._look;return l`<textarea id="snippet" readonly aria-label="The line to paste" .value=${c}></textarea>
      <div class="acts">
        <button id="copy" @click=${async()=>$(this,"jw-notice",await f4(c))}>Copy the line</button>
        ${this._way==="files"?l`<button id="save-script" @click=${()=>K(la,"text/javascript",this._script)}>Save
            ${la}</button>
              <button id="save-snapshot" @click=${()=>K(pr,"application/json",i)}>Save
              ${pr}</button>`:p}
      </div>
      <h3>As your visitors see it</h3>
      <div class="preview"><jointwise-matrix .snapshot=${i} theme=${h} lang=${f||p}
        ?compact=${_} link=${g||p}></jointwise-matrix></div>`}};async function f4(s){let{link:e}=await xn(s);return e?{text:"Copy the line by hand out of its field."}:{text:"Line copied; paste it where the matrix shall stand."}}customElements.define("jw-website",sc);var nc=class extends w({matrix:m(u),column:{type:Number},power:{type:Number}}){static styles=[y,R(z),b`
      .scroll { overflow-x: auto; margin-top: var(--space-3); }
      .plain { min-width: 500px; }
      td.number { padding-left: var(--space-2); }
      .plain thead th { white-space: normal; vertical-align: bottom; }
      .margin { font-weight: 650; padding: 5px 6px !important; }
      [data-step='refused'] { background: var(--refused); color: var(--refused-ink); }
    `];render(){let{low_hz:e,high_hz:t}=this.matrix.columns[this.column];return l`<p>${e===t?M(e):`${M(e)} to ${M(t)}`}. Cautious to generous
    figures; the power limits are PEP.</p>
      <div class="scroll" tabindex="0" role="region" aria-label="Limits by connector">
        <table class="plain">
          <thead>
            <tr>
              <th>Connector</th><th class="number">Margin, dB</th>
              ${this.matrix.limits.map(n=>l`<th class="number">${Ps[n]}, W</th>`)}
              <th class="number">Return loss, dB</th><th class="number">Largest safe, W</th><th>To know</th>
            </tr>
          </thead>
          <tbody>
            ${this.matrix.families.map((n,a)=>this._row(a))}
          </tbody>
        </table>
      </div>`}_row(e){let{matrix:t,column:n}=this,a=$e(t,e,n,t.powers_w.indexOf(this.power));return l`<tr data-family=${a.family.id}>
      <th scope="row">${a.family.name}</th>
      <td class="number margin" data-step=${He(a)}>${ft(a)}</td>
      ${t.limits.map(i=>this._range(t[`${i}_allowed_w`][e][n],r=>j(r,3)))}
      ${this._range(t.return_loss_db[e][n],i=>j(i,3))}
      <td class="number">${a.largest===null?"none":Nn(a.largest)}</td>
      <td>${ls(a).map(([,i])=>l`<div>${i}</div>`)}</td>
    </tr>`}_range([e,t],n){return e===null?l`<td class="number">–</td>`:l`<td class="number">${e===t?n(e):l`${n(e)}<br>to ${n(t)}`}</td>`}};customElements.define("jw-band-limits",nc);var ac=class extends w({sheet:m(u),sources:m(u),packs:m(u)}){static styles=[y,ae,b`
      section { margin-top: var(--space-4); }
      h3 { margin-bottom: var(--space-2); }
      .hazard {
        padding: var(--space-2) var(--space-3); margin-top: var(--space-2); border-left: 4px solid var(--alarm);
        background: var(--alarm-wash);
      }
      td:nth-child(2) { font-weight: 600; }
    `];render(){let{sheet:e}=this;return l`<p>${e.summary}${ce(e.pack)}</p>
      ${e.also_called.length>0?l`<p class="quiet">Also called ${e.also_called.join(", ")}.</p>`:p}
      ${e.hazards.length>0?l`<section><h3>Near relatives: what not to
          mate</h3>${e.hazards.map(t=>this._hazard(t))}</section>`:p}
      <section>
        <h3>Values</h3>
        <table class="plain">
          <thead><tr><th>Quantity</th><th>Value</th><th>From</th></tr></thead>
          <tbody>${e.values.map(t=>this._value(t))}</tbody>
        </table>
      </section>`}_hazard(e){return l`<div class="hazard">${e.text} <span class="kind">${e.kind}</span></div>`}_value(e){let{unit:t,low:n,high:a}=e,i=n===a?se(n,t):`${se(n,t)} to ${se(a,t)}`;return l`<tr data-field=${e.field}>
      <th scope="row">${e.name}</th>
      <td>${i}</td>
      <td>
        ${e.kinds.map(r=>l`<span class="kind">${r}</span> `)}${ce(this._pack(e))}
        <div class="quiet">${e.sources.map(r=>this._title(r)).join("; ")}${e.note?l`. ${e.note}`:p}</div>
      </td>
    </tr>`}_pack({sources:e}){return e.map(t=>$i(t,this.packs)).find(Boolean)}_title(e){return Me(this.sources.find(t=>t.id===e))||e}};customElements.define("jw-data-sheet",ac);var fr=b`
  details { border: 1px solid var(--line); border-radius: var(--round); }
  summary {
    display: flex; flex-wrap: wrap; gap: var(--space-1) var(--space-3); align-items: center; min-height: 52px;
    padding: var(--space-2) var(--space-3);
    cursor: pointer;
  }
  summary::marker { content: ''; }
  summary::after {
    content: '▾'; margin-left: auto; color: var(--soft);
  }
  details[open] summary::after { content: '▴'; }
  .binds { font-weight: 600; text-decoration: underline; }
  .number { padding: var(--space-1) var(--space-2); border-radius: 5px; font-weight: 700; }
  p { flex: 1 0 100%; font-size: var(--type-small); }
  jw-steps { padding: 0 var(--space-3) var(--space-3); }
  @media print {
    summary { min-height: 0; break-inside: avoid; break-after: avoid; }
    summary::after { display: none; }
  }
`;function da(s,{target:e,currentTarget:t},n){if(e!==t)return s;let a=[...s].filter(i=>i!==n);return new Set(e.open?[...a,n]:a)}var j1=s=>`${s*100}%`,E1=j1(.75),O1=s=>j1(Math.min(s*.75,1));var g4={contact:({contact_temperature_c:s,allowed_temperature_c:e})=>[qt(s),qt(e)],cable:({cable_temperature_c:s,cable_allowed_temperature_c:e})=>[qt(s),qt(e)],voltage:({peak_voltage_v:s,power_w:e},{allowed_w:t})=>[B(s,"V",3),B(s*Math.sqrt(t/e),"V",3)]},ic=class extends w({cell:m(u)}){static styles=[y,R(z),b`
      :host { display: grid; gap: var(--space-3); }
      h3 {
        display: flex; flex-wrap: wrap; gap: 0 var(--space-3); justify-content: space-between;
        font-size: var(--type-text);
      }
      h3 span { font-weight: 400; }
      .bar {
        position: relative; height: 14px; margin: var(--space-1) 0; background: var(--sunk);
        border: 1px solid var(--edge);
        border-radius: 4px; overflow: hidden;
      }
      .bar i { display: block; height: 100%; width: var(--taken); border-right: 1px solid var(--ink); }
      .bar::after {
        content: ''; position: absolute; inset: 0 auto 0 calc(var(--limit) - 1px); width: 2px; background: var(--ink);
      }
      @media print { :host { gap: 2mm; } .bar { height: 3mm; } }
    `];render(){let e=["contact","cable","voltage"].flatMap(t=>this.cell.limits.filter(n=>n.id===t));return l`${e.map(t=>this._bar(t))}`}_bar(e){let{cell:t}=this,{id:n,name:a,binding:i,margin_db:r,allowed_w:o}=e;if(r===null||o===null||o<=0)return l`<div data-bar=${n}><h3><b>${a}</b><span>${t.power_w===0?"nothing to carry on receive":"no power is allowed"}</span></h3></div>`;let[d,c]=g4[n](t,e),h=t.power_w/o,f=i?"; the limit that is reached first":"";return l`<div data-bar=${n} ?data-binding=${i}>
      <h3><b>${a}</b><span>${d} of ${c}</span></h3>
      <div class="bar" role="img" aria-label="${a}: ${d} of ${c} allowed"
        style="--taken:${O1(h)};--limit:${E1}"><i data-step=${G(r)}></i></div>
      <p class="quiet">${j(h*100,2)} % of the ${C(Be(o,3))} it allows:
        ${A(r)} dB, ${zs(r)}${f}.</p>
    </div>`}};customElements.define("jw-bars",ic);var b4=["frequency","power"],rc=class extends w({cell:m(u),load:m(u),_chosen:x(u)}){static styles=[y,b`
      .limits { display: flex; flex-wrap: wrap; gap: var(--space-2); margin-bottom: var(--space-2); }
      h4 { margin-top: var(--space-3); break-after: avoid; }
      @media print { .limits { display: none; } }
    `];constructor(){super(),this._charts=[]}willUpdate(e){e.has("cell")&&e.get("cell")?.family.id!==this.cell.family.id&&(this._chosen=void 0),(e.has("cell")||e.has("_chosen"))&&(this._charts=b4.map(n=>this._chart(n)));let{cell:t}=this;e.has("cell")&&(this._match=n=>j0({cell:t,colours:n}))}render(){return l`<div class="limits" role="group" aria-label="Limit in the charts">
        ${this.cell.limits.map(({id:e,name:t})=>l`<button aria-pressed=${e===this._limit.id} @click=${()=>this._chosen=e}>${t}</button>`)}
      </div>
      ${this._charts.map(({along:e,figure:t,label:n})=>l`<h4>Against ${e}</h4>
          <jw-chart data-along=${e} .figure=${t} .label=${n} .load=${this.load}></jw-chart>`)}
      <h4>Return loss against frequency</h4>
      <jw-chart data-shows="match" .figure=${this._match} .label=${E0(this.cell)}
        .load=${this.load}></jw-chart>
      <p class="quiet">Solid: most cautious figures; dotted: most generous; between them the range. The diamond is this
      cell; across the return loss runs the one asked for.</p>`}get _limit(){return this.cell.limits.find(({id:e})=>e===this._chosen)??this.cell.limits[0]}_chart(e){let t={cell:this.cell,limit:this._limit,along:e};return{along:e,figure:n=>S0({...t,colours:n}),label:T0(t)}}};customElements.define("jw-charts",rc);function T1(s,e){let t=new Map;for(let n of[...s.filter(({purpose:a})=>a),...s.filter(({purpose:a})=>!a)]){let a=n.purpose||e;t.set(a,[...t.get(a)??[],n])}return[...t].map(([n,a])=>({purpose:n[0].toUpperCase()+n.slice(1),steps:a}))}var _4="what it allows, and the margin",w4=s=>({...s,purpose:""}),oc=class extends w({limit:m(u),catalogue:m(u),_open:x(u)}){static styles=[y,R(z),fr,b`.group { border-width: 1px 0 0; border-radius: 0; }`];constructor(){super(),this._open=new Set}render(){let{limit:e}=this;return l`<details ?open=${this._open.has("")} @toggle=${t=>this._open=da(this._open,t,"")}>
      <summary>
        <strong>${e.name}</strong>
        ${e.binding?l`<span class="binds sign">limits</span>`:p}
        ${e.margin_db===null?l`<span class="quiet">no margin on receive</span>`:l`<span class="number" data-step=${G(e.margin_db)}>${A(e.margin_db)} dB</span>
              <span class="quiet">to ${A(e.margin_high_db)} dB${this._allowed()}</span>`}
        <p>${e.sentence}</p>
      </summary>
      ${this._open.has("")?T1(e.steps,_4).map(t=>this._group(t)):p}
    </details>`}_group({purpose:e,steps:t}){let n=t.filter(({end:a})=>a!=="high").length;return l`<details class="group more" ?open=${this._open.has(e)}
      @toggle=${a=>this._open=da(this._open,a,e)}>
      <summary>${e} <span class="quiet">${n} ${n===1?"step":"steps"}</span></summary>
      ${this._open.has(e)?l`<jw-steps .steps=${t.map(w4)} .catalogue=${this.catalogue}></jw-steps>`:p}
    </details>`}_allowed(){let{allowed_w:e,allowed_high_w:t}=this.limit;return e===null?"":`; allows ${C(e)} to ${C(t)}`}};customElements.define("jw-limit",oc);var A1=[["contact_db","contacts"],["conductor_db","conductors, skin effect"],["dielectric_db","dielectric"],["mismatch_db","mismatch"]],y4={standard:["Limit of the standard","The most that the standard lets a new mated pair of this family lose."],datasheet:["Published maximum","The most that a data sheet states for a part; no standard promises it for the family."],handbook:["Published figure","Measured, or passed on at second hand; no standard promises it."],"common practice":["Customary figure","What the trade reckons with; no standard promises it."],memory:["Maximum, from memory","Its text was not seen; nothing promises it."]},lc=class extends w({losses:m(u),sources:m(u)}){static styles=[y,b`
      .two { display: grid; grid-template-columns: 1.6fr 1fr; gap: var(--space-4); }
      section { padding: var(--space-3) var(--space-3); border: 1px solid var(--line); border-radius: var(--round); }
      .total { font-size: var(--type-lead); font-weight: 700; }
      i { display: block; height: 6px; min-width: 1px; background: var(--soft); border-radius: 3px; }
      td:last-child { width: 35%; vertical-align: middle; }
      @media print { .two { break-inside: avoid; } }
      @media (max-width: 480px) { .two { grid-template-columns: 1fr; } }
    `];render(){let{losses:e}=this,t=Math.max(...A1.map(([r])=>e[r])),[n,a]=y4[e.published_kind],i=this.sources?.find(({id:r})=>r===e.published_source);return l`<div class="two">
      <section>
        <h4>Expected, computed</h4>
        <p class="total">${j(e.expected_db,3)} dB</p>
        <table class="plain">
          <tbody>
            ${A1.map(([r,o])=>l`<tr>
                <th scope="row">${o}</th>
                <td class="number">${j(e[r],3)} dB</td>
                <td><i style="width:${t>0?e[r]/t*100:0}%"></i></td>
              </tr>`)}
          </tbody>
        </table>
      </section>
      <section>
        <h4>Guaranteed</h4>
        <p class="total">
          ${e.guaranteed_db===null?"none stated":`${j(e.guaranteed_db,3)} dB`}
        </p>
        <h4>${n}</h4>
        <p class="published">${j(e.published_db,3)} dB at ${M(e.published_at_hz)}</p>
        <p class="quiet">${a} Reflection is already included; nothing is added to it.</p>
        <p class="quiet">${Me(i)} <span class="kind">${e.published_kind}</span></p>
      </section>
    </div>`}};customElements.define("jw-losses",lc);var v4={holds:"as asked for",depends:"in doubt: it depends on which source one believes",misses:"less than asked for"},$4={holds:"holds",misses:"refused"},dc=class extends w({match:m(u),catalogue:m(u)}){static styles=[y,R(z),fr,b`.number[data-step='refused'] { background: var(--refused); color: var(--refused-ink); }`];render(){let{match:e}=this;return l`<details ?open=${e.state==="misses"}>
      <summary>
        <strong>Return loss</strong>
        <span class="number" data-step=${$4[e.state]??p}>${j(e.return_loss_db,3)} dB</span>
        <span class="quiet">to ${j(e.return_loss_high_db,3)} dB; asked for:
          ${j(e.asked_db,3)} dB</span>
        <strong class="state">${v4[e.state]}</strong>
        <p>${e.sentence}</p>
      </summary>
      <jw-steps .steps=${e.steps} .catalogue=${this.catalogue}></jw-steps>
    </details>`}};customElements.define("jw-match",dc);var x4={contact:"Joint",cable:"Cable"},uc=class extends w({ratings:m(u),sources:m(u)}){static styles=[y,b`
      .plain div { font-weight: 400; margin-top: var(--space-half); }
      .plain thead th { white-space: normal; vertical-align: bottom; }
      [data-role='decides'] .does { color: var(--alarm); font-weight: 600; }
      @media print { tr { break-inside: avoid; } }
    `];render(){return this.ratings.length===0?l`<p class="quiet">None is known.</p>`:l`<p class="quiet">Each is held against what is computed for its own frequency, air, temperature and
      cable, then carried over to this cell. One that is published and lower decides; one from memory or habit never
      does.</p>
      <table class="plain">
        <thead>
          <tr>
            <th scope="col">Rating</th><th scope="col" class="number">Computed there</th>
            <th scope="col" class="number">Here</th>
          </tr>
        </thead>
        <tbody>${this.ratings.map(e=>this._rating(e))}</tbody>
      </table>`}_rating(e){let t=this.sources?.find(({id:n})=>n===e.source);return l`<tr data-role=${e.role}>
      <th scope="row">
        ${x4[e.part]}, ${C(e.power_w)} at ${M(e.frequency_hz)}
        <div>Air ${qt(e.ambient_temperature_c)},
          hottest ${qt(e.hottest_temperature_c)},
          ${e.cable}</div>
        <div class="quiet">${Me(t)} <span class="kind">${e.kind}</span>${e.note?l` ${e.note}`:p}</div>
        <div class="does">${e.sentence}</div>
      </th>
      <td class="number">${cc(e.computed_w)}<br>to ${cc(e.computed_high_w)}</td>
      <td class="number">${cc(e.here_w)}</td>
    </tr>`}},cc=s=>C(Number(s.toPrecision(3)));customElements.define("jw-ratings",uc);var hc=class extends w({cell:m(u),catalogue:m(u),loadCharts:m(u),_open:x(u)}){static styles=[y,ae,R(z),b`
      .verdict { display: flex; gap: var(--space-4); align-items: center; padding-bottom: var(--space-4); }
      .verdict p { font-size: var(--type-text); }
      .verdict b {
        padding: var(--space-2) var(--space-3); border-radius: var(--round); line-height: 1.2; text-align: center;
      }
      .verdict b span { display: block; font-size: var(--type-lead); white-space: nowrap; }
      .verdict b[data-step='refused'] { background: var(--refused); color: var(--refused-ink); }
      .facts {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: var(--space-2) var(--space-4);
      }
      .facts > :last-child { grid-column: 1 / -1; }
      dt { color: var(--soft); font-size: var(--type-fine); }
      dd { font-weight: 600; }
      section { margin-top: var(--space-4); }
      h3 { margin-bottom: var(--space-2); }
      section > * + :is(jw-limit, jw-match) { margin-top: var(--space-2); display: block; }
      details { margin-top: var(--space-3); border-top: 1px solid var(--line); }
      summary {
        cursor: pointer; min-height: var(--target); align-content: center; font-size: var(--type-text);
        font-weight: 600;
      }
      .gate td:first-child { width: 1.6rem; font-weight: 700; }
      .failed td { color: var(--alarm); }
      @media print {
        section { margin-top: 3mm; }
        h3 { break-after: avoid; }
        /* those of the matrix are on paper already */
        .cautions { display: none; }
      }
    `];constructor(){super(),this._open=new Set}render(){let{cell:e,catalogue:t}=this;return l`<div class="verdict">
        ${this._number()}
        <p id="verdict">${e.verdict}${ce(e.family.pack||e.column.pack)}</p>
      </div>
      <jw-bars .cell=${e}></jw-bars>
      <section aria-label="Figures"><dl class="facts">${this._facts()}</dl></section>
      <section aria-label="Working">
        <h3>The working</h3>
        ${e.refused_by==="match"?[this._match(),this._limits()]:[this._limits(),this._match()]}
      </section>
      ${this._folded("Charts",l`<jw-charts .cell=${e} .load=${this.loadCharts}></jw-charts>`)}
      ${this._folded(this._checks,this._gates())}
      ${this._folded("Loss of the mated pair",l`<jw-losses .losses=${e.losses} .sources=${t?.sources}></jw-losses>`)}
      ${this._folded("Published power ratings",l`<jw-ratings .ratings=${e.ratings} .sources=${t?.sources}></jw-ratings>`)}
      ${this._folded("Breakdown of the air gap and wave modes",l`<p class="quiet">For information; these do not enter the margin.</p>
          <jw-steps .steps=${e.air_breakdown} .catalogue=${t}></jw-steps>`)}
      <section class="cautions"><jw-cautions .cautions=${e.cautions}></jw-cautions></section>`}_folded(e,t){let[n]=e.split(":"),a=i=>this._open=da(this._open,i,n);return l`<details class="more" ?open=${this._open.has(n)} @toggle=${a}>
      <summary>${e}</summary>
      ${this._open.has(n)?t:p}
    </details>`}get _checks(){let e=this.cell.gates.filter(({passed:t})=>!t);return e.length===0?"Checks: all passed":`Checks: ${e.map(({name:t})=>t).join(", ")} not passed`}_limits(){return this.cell.limits.map(e=>l`<jw-limit data-limit=${e.id} .limit=${e} .catalogue=${this.catalogue}></jw-limit>`)}_match(){return l`<jw-match .match=${this.cell.match} .catalogue=${this.catalogue}></jw-match>`}_number(){let{margin_db:e,match:t,refused_by:n,undecided:a}=this.cell,i=(o,d,c)=>l`<b data-step=${o}>${c?l`<span>${c}</span>`:p}${d}</b>`,r=`${Is(t.return_loss_db)} dB`;return n?i("refused","refused",n==="match"?r:""):e===null?i("holds","on receive",r):i(G(e),a?"uncertain":zs(e),`${A(e)} dB`)}_facts(){let{cell:e}=this,t=`${A(e.margin_db??0)} and ${A(e.margin_high_db??0)} dB`;return[["Power",C(e.power_w)],["Computed at",M(e.frequency_hz)],["Margin between",e.margin_db===null?void 0:`${t}, by how good the parts are`],["Largest safe power",e.largest_power_w===null?"none":C(Be(e.largest_power_w,3))],["Cable counted",`${e.cable_name}, ${e.cable_given?"as given":"the usual one of this connector"}`]].map(([a,i])=>i===void 0?p:l`<div><dt>${a}</dt><dd>${i}</dd></div>`)}_gates(){return l`<table class="plain">
      <thead>
        <tr><th><span class="unseen">Passed</span></th><th>Check</th><th>Finding</th></tr>
      </thead>
      <tbody>
        ${this.cell.gates.map(e=>l`<tr class=${e.passed?"gate":"gate failed"} data-gate=${e.id}>
            <td>${e.passed?"✓":e.hard?"✕":"!"}<span
              class="unseen">${e.passed?"passed":e.hard?"refuses":"marked"}</span></td>
            <td>${e.name}</td>
            <td>${e.sentence} ${e.kind?l`<span class="kind">${e.kind}</span>`:p}</td>
          </tr>`)}
      </tbody>
    </table>`}};customElements.define("jw-derivation",hc);var M1="close this sheet and open another.",pc=class extends w({kind:{type:String},state:m(u),matrix:m(u),cell:m(u),catalogue:m(u),error:m(u),power:{type:Number},loadCharts:m(u),loadEmbed:m(u),transport:m(u)},O){static styles=[y,b`.room { height: 70vh; }`];render(){return this._view()??l`<p class="room" role="status">${this.error?.message??this._waiting()}</p>`}_waiting(){let{family:e,band:t,frequency_hz:n}=this.state,{bands:a}=this.vocabulary.lists;if(this.kind==="family"&&this.catalogue)return`There is no connector “${e}” here; ${M1}`;if(this.kind!=="band"||this.matrix.margin_db===void 0)return"Calculating…";let i=a.find(({id:r})=>r===t)?.name??(t===null&&M(n));return i?`${i} is not among the columns of this matrix; “Bands and powers” among the settings puts it there.`:`There is no band “${t}” here; ${M1}`}_view(){let{catalogue:e,cell:t,matrix:n,state:a}=this;switch(this.kind){case"derivation":return t&&l`<jw-derivation .cell=${t} .catalogue=${e} .loadCharts=${this.loadCharts}></jw-derivation>`;case"methods":return e&&l`<jw-methods .catalogue=${e}></jw-methods>`;case"website":return l`<jw-website .state=${a} .power=${this.power} .transport=${this.transport}
          .loadEmbed=${this.loadEmbed}></jw-website>`;case"family":{let i=e?.families.find(({id:r})=>r===a.family);return e&&i&&l`<jw-data-sheet .sheet=${i} .sources=${e.sources} .packs=${e.packs}></jw-data-sheet>`}case"band":{let i=n.columns.indexOf(sn(a,n));return i===-1||n.margin_db===void 0?void 0:l`<jw-band-limits .matrix=${n} .column=${i} .power=${this.power}></jw-band-limits>`}}}};customElements.define("jw-detail",pc);var mc=class extends w({columns:m(u),band:{type:String}}){static styles=[y,b`
      div { display: flex; gap: var(--space-2); align-items: center; justify-content: space-between; }
      select { flex: 1; text-align-last: center; font-weight: 650; font-size: var(--type-text); }
      button { padding: 0 var(--space-3); }
      .step span { font-size: var(--type-lead); line-height: 1; }
    `];render(){let e=this.columns.findIndex(({id:n})=>n===this.band);if(e===-1)return l`<div><button @click=${()=>$(this,"jw-whole",{whole:!1})}>One band</button></div>`;let t=(n,a,i)=>l`<button class="step" aria-label=${n} ?disabled=${i===void 0}
        @click=${()=>this._turn(i.id)}><span>${a}</span></button>`;return l`<div>
      ${t("Band before","‹",this.columns[e-1])}
      <select aria-label="Band in the list" @change=${({target:n})=>this._turn(n.value)}>
        ${this.columns.map(({id:n,name:a})=>l`<option value=${n} .selected=${n===this.band}>${a}</option>`)}
      </select>
      ${t("Band after","›",this.columns[e+1])}
      <button @click=${()=>$(this,"jw-whole",{whole:!0})}>Whole table</button>
    </div>`}_turn(e){$(this,"jw-band",{band:e})}};customElements.define("jw-bands",mc);var fc=class extends w({}){static styles=[y,R(z),b`
      div {
        display: flex; flex-wrap: wrap; gap: var(--space-half) var(--space-3); align-items: center;
        font-size: var(--type-small);
      }
      .scale {
        display: flex; flex: 1 1 20rem; max-width: 46rem; gap: var(--space-half); margin: 0; padding: 0;
        list-style: none;
      }
      li {
        flex: 1; padding: var(--space-half) var(--space-1); text-align: center; font-size: var(--type-fine);
        line-height: 1.3;
      }
      li:first-child { border-radius: 5px 0 0 5px; }
      li:last-child { border-radius: 0 5px 5px 0; }
      li b { display: block; font-weight: 600; }
      [data-step='refused'] {
        color: var(--refused-ink);
        background: repeating-linear-gradient(135deg, var(--refused) 0 4px, var(--refused-line) 4px 5px);
      }
      @media (max-width: 480px) {
        li { padding: var(--space-half) var(--space-half); }
        li[data-step='refused'] { display: none; }
      }
      @media print { div, li { font-size: var(--type-fine); } }
    `];render(){return l`<div><span id="scale">Margin, dB</span>
      <ul class="scale" aria-labelledby="scale">
        ${Ne.map(({id:e,words:t})=>l`<li data-step=${e}><b>${t}</b> ${vi(e)}</li>`)}
        <li data-step="refused"><b>refused</b> not for use</li>
      </ul></div>`}};customElements.define("jw-key",fc);var gr=20,q1=s=>`${(Math.min(Math.max(s,-gr),gr)+gr)/(2*gr)*100}%`;function nn(s,e,...t){let n=document.createElement(s);return n.className=e,n.append(...t),n}function k4({margin:s,high:e}){let t=nn("i","");return t.style.setProperty("--low",q1(s)),t.style.setProperty("--high",q1(e)),nn("span","range",t)}function S4(s,e){let t=s.map((n,a)=>{let i=nn("i","");return i.dataset.step=He(n),i.toggleAttribute("data-chosen",a===e),i});return nn("span","ladder",...t)}function C1(s,e){let t=s[e],n=nn("b","");n.dataset.signs=ki(t);let a=nn("span","marks",n);return t.margin!==null&&a.append(k4(t)),a.append(S4(s,e)),a.ariaHidden="true",a}var br=`
.marks { display: grid; grid-template-rows: 1em 5px 6px; gap: 1px; padding: 0 3px; font-size: 0.75em; line-height: 1; }
.marks b { overflow: clip; white-space: nowrap; font-weight: 600; letter-spacing: 0.04em; }
.marks b::before { content: attr(data-signs); }
.marks .range {
  grid-row: 2; position: relative; background: linear-gradient(currentColor 0 0) center/1px 100% no-repeat;
}
.marks .range i {
  position: absolute; top: 1px; height: 3px; min-width: 3px; left: var(--low); right: calc(100% - var(--high));
  background: currentColor;
}
.ladder { grid-row: 3; display: flex; gap: 1px; height: 6px; outline: 1px solid var(--card); }
.ladder i { flex: 1; }
.ladder [data-chosen] { box-shadow: inset 0 -2px currentColor; }
`;var gc=class extends w({matrix:m(u),power:{type:Number},family:{type:String},column:{type:String},all:{type:Boolean,reflect:!0}}){static styles=[y,R(z),R(br),b`
      :host { font-size: var(--type-small); }
      h3 { margin-bottom: var(--space-1); }
      ol {
        display: flex; flex-wrap: wrap; gap: var(--space-half); margin: 0 0 var(--space-3); padding: 0;
        list-style: none;
      }
      li { min-width: 74px; padding: var(--space-1) var(--space-2); border-radius: 5px; text-align: center; }
      li b { display: block; font-size: var(--type-text); }
      li[data-chosen] { outline: 2px solid var(--accent); outline-offset: -2px; }
      [data-step='refused'] { background: var(--refused); color: var(--refused-ink); }
      dl {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(260px, 1fr)); gap: var(--space-1) var(--space-4);
      }
      dl div { display: grid; grid-template-columns: 54px 1fr; gap: var(--space-2); align-items: center; }
      dt { text-align: center; font-weight: 600; }
      dd { line-height: 1.3; }
      .marks { display: block; }
      .range { display: block; height: 5px; }
      @media print {
        :host { font-size: var(--type-fine); }
        dl { grid-template-columns: repeat(4, 1fr); gap: 0.5mm 4mm; }
        .onscreen, :host(:not([all])) :is(.marked, dl) { display: none; }
      }
    `];constructor(){super(),this.family="",this.column=""}render(){let{families:e,columns:t,powers_w:n}=this.matrix,a=n.indexOf(this.power);if(this.matrix.margin_db===void 0||a===-1)return p;let r=e.flatMap(({id:c},h)=>this.all||c===this.family?[h]:[]).flatMap(c=>t.map((h,f)=>$e(this.matrix,c,f,a))),o=new Map(r.flatMap(ls)),d=[...e,...t].some(({pack:c})=>c);return l`${this._ladder()}<h3 class="marked">Marks</h3><dl>
      ${[...o].map(([c,h])=>this._row(c,h))}
      ${this._row(l`<span class="marks"><span class="range"><i></i></span></span>`,"from the most cautious to the most generous figures; the upright line is 0 dB, the cautious end is printed","onscreen")}
      ${this._row(l`<span class="marks"><span class="ladder">${["ample","fine","tight","at","over"].map(c=>l`<i data-step=${c}></i>`)}</span></span>`,`the ladder: ${n.map(C).join(", ")}, each in the colour of its margin; the one shown is underlined`,"onscreen")}
      ${d?this._row("◆","from a pack of yours or of the server"):p}
    </dl>`}_ladder(){let{families:e,columns:t,powers_w:n}=this.matrix,a=e.findIndex(({id:o})=>o===this.family),i=t.findIndex(({id:o})=>o===this.column);if(a===-1||i===-1)return p;let r=n.map((o,d)=>$e(this.matrix,a,i,d));return l`<h3>${e[a].name} on ${t[i].name}, power by power</h3>
      <ol>${r.map(o=>l`<li ?data-chosen=${o.power===this.power} data-step=${He(o)}>${C(o.power)}
          <b>${ft(o)}</b></li>`)}</ol>`}_row(e,t,n=""){return l`<div class=${n}><dt>${e}</dt><dd>${t}</dd></div>`}};customElements.define("jw-marks",gc);var R1={ArrowUp:[-1,0],ArrowDown:[1,0],ArrowLeft:[0,-1],ArrowRight:[0,1]},N1=(s,e,t)=>Math.min(Math.max(s,e),t);function L1({key:s,ctrlKey:e},[t,n],a,i){let r=t===-1?0:-1;if(s==="Home")return e?[0,0]:[t,r];if(s==="End")return e?[a-1,i-1]:[t,i-1];if(!(s in R1))return;let[o,d]=R1[s],c=[N1(t+o,-1,a-1),N1(n+d,-1,i-1)];return c[0]===-1&&c[1]===-1?[t,n]:c}var j4=6;function _r(s,e,t){s.dataset[e]!==t&&(t===void 0?delete s.dataset[e]:s.dataset[e]=t)}function z1(s,e){let{firstChild:t}=s;s.childNodes.length===1&&t instanceof Text?t.data!==e&&(t.data=e):s.replaceChildren(e),_r(s,"long",e.length>=j4?"":void 0)}function P1(s){z1(s,""),_r(s,"step",void 0)}function bc(s,e,t){z1(s,t),_r(s,"step",He(e))}function I1(s,e,t,n){bc(s,e[t],n),s.append(C1(e,t))}function W1(s,e,t,n){let a=e.flatMap((i,r)=>{if(r!==t&&!n)return[];let o=document.createElement("span");o.dataset.step=He(i),o.toggleAttribute("data-chosen",r===t);let d=document.createElement("small");return d.textContent=n?ki(i):"",o.append(d,ft(i)),o});_r(s,"step",void 0),s.replaceChildren(...a)}var E4=b`
  :host {
    --head: 97px; --least: 44px; --most: 112px; --row: 46px;
    --hatch: repeating-linear-gradient(135deg, var(--refused) 0 4px, var(--refused-line) 4px 5px);
  }
  .frame {
    position: relative; overflow: auto hidden; overscroll-behavior-x: contain; scroll-padding-left: var(--head);
    max-width: calc(var(--head) + var(--columns) * var(--most)); background: var(--card);
    border: 1px solid var(--line); border-radius: var(--round);
  }
  :host([fits]) .frame { overflow: visible; scroll-padding: 0; }
  #outdated:empty { display: none; }
  #outdated {
    margin-bottom: var(--space-2); padding: var(--space-2) var(--space-4); background: var(--alarm-wash);
    border: 1px solid var(--alarm);
    border-radius: var(--round);
  }
  /* grey keeps the contrast of the numbers, which fading would take */
  [data-outdated] td { filter: grayscale(1); }
  table {
    border-collapse: separate; border-spacing: 0; table-layout: fixed; width: 100%;
    min-width: calc(var(--head) + var(--columns) * var(--least));
  }
  th, td { padding: 0; font-weight: inherit; }
  thead th {
    position: sticky; top: var(--lift, 0); z-index: 2; background: var(--card); height: 45px;
    border-bottom: 1px solid var(--edge);
  }
  thead th:last-child { border-radius: 0 var(--round) 0 0; }
  tbody th { position: sticky; left: 0; z-index: 1; background: var(--card); border-right: 1px solid var(--edge); }
  thead th:first-child {
    left: 0; z-index: 3; width: var(--head); border-right: 1px solid var(--edge); border-radius: var(--round) 0 0 0;
  }
  th button {
    display: grid; width: 100%; height: 100%; min-width: 0; min-height: var(--target); padding: 0;
    align-content: center; background: none; border: 1px solid transparent; border-radius: 5px;
  }
  :is(th button, td):hover { outline: 1px solid var(--ink); outline-offset: -1px; }
  :focus-visible { outline: 3px solid var(--focus); outline-offset: -3px; position: relative; z-index: 1; }
  tbody th button {
    text-align: left; padding: var(--space-half) var(--space-1) var(--space-half) var(--space-2);
    font-size: var(--type-fine); line-height: 1.15; font-weight: 600;
    overflow-wrap: anywhere;
  }
  thead button { text-align: center; font-size: var(--type-small); font-weight: 650; line-height: 1.05; }
  thead button span { font-stretch: condensed; letter-spacing: -0.02em; }
  thead button small { display: block; font-size: var(--type-fine); font-weight: 400; color: var(--soft); }
  td {
    height: var(--row); border: 1px solid var(--card); border-radius: 5px; text-align: center; cursor: pointer;
    font-size: var(--type-small); font-stretch: condensed; font-weight: 600; line-height: 16px; letter-spacing: -0.02em;
    white-space: nowrap;
    background: var(--sunk);
  }
  td[data-long] { font-size: var(--type-fine); font-weight: 500; letter-spacing: -0.04em; }
  td[data-step='refused'] { background: var(--hatch); color: var(--refused-ink); font-weight: 500; }
  td[data-open] { outline: 3px solid var(--accent); outline-offset: -2px; position: relative; z-index: 1; }
  .powers { display: none; }
  /* sixteen bands of 44 px each between the edges of a tablet */
  @media (max-width: 900px) { :host { --head: 80px; } }
  @media (max-width: 480px) { :host { --head: 92px; --least: 48px; } }
`,O4=b`
  @media screen {
    :host([band]:not([band=''])) {
      --head: 50%; --least: 120px; --most: 400px;
      thead { display: none; }
      .frame { max-width: none; touch-action: pan-y; }
      tbody th button { font-size: var(--type-text); }
      td { padding: 0 var(--space-3); font-size: var(--type-text); text-align: right; letter-spacing: 0; }
      td::after { float: left; font-weight: 400; }
      .marks { grid-template-columns: minmax(0, 1fr); }
    }
  }
`,T4=Ne.map(({id:s,words:e})=>`:host([band]:not([band=''])) td[data-step="${s}"]::after{content:"${e}"}`),A4=b`
  @media print {
    :host { --head: 34mm; --line-height: 5mm; --least: 0px; }
    :host([marked]) { --line-height: 2.95mm; }
    :host(:not([marked])) td > span { font-size: var(--type-text); }
    :host(:not([marked])) .powers { display: none; }
    .frame { overflow: visible; border: 0; }
    thead th, tbody th { position: static; }
    thead { display: table-header-group; }
    tr { break-inside: avoid; }
    thead th { height: auto; font-size: var(--type-small); font-weight: 650; line-height: 1.1; text-align: center; }
    thead button { display: contents; }
    tbody th button {
      grid-template-columns: 1fr auto; align-items: center; gap: var(--space-2); min-height: 0;
      padding: 0 var(--space-2) 0 var(--space-2);
      font-size: var(--type-small);
    }
    td { height: auto; background: none; }
    td > span {
      display: block; height: var(--line-height); padding-right: 16%; text-align: right; font-size: var(--type-fine);
      font-weight: 450; line-height: var(--line-height);
    }
    /* without height of its own it never reaches into the line below */
    td small { float: left; height: 0; padding-left: 0.5mm; }
    td > [data-step='refused'] { background: var(--hatch); color: var(--refused-ink); }
    td > [data-chosen], .powers [data-chosen] { font-weight: 700; }
    .powers { display: block; text-align: right; font-size: var(--type-fine); font-weight: 400; }
    .powers span { display: block; height: var(--line-height); line-height: var(--line-height); white-space: nowrap; }
  }
`,B1=[R(z),R(br),E4,O4,R(`@media screen{${T4.join("")}}`),A4];function H1(s,e){let t;s.addEventListener("pointerdown",({clientX:n,clientY:a,pointerType:i})=>{t=i==="touch"?{x:n,y:a}:void 0}),s.addEventListener("pointercancel",()=>t=void 0),s.addEventListener("pointerup",({clientX:n,clientY:a})=>{if(!t)return;let[i,r]=[n-t.x,a-t.y];t=void 0,Math.abs(i)>=48&&Math.abs(i)>2*Math.abs(r)&&e(i<0?1:-1)})}var U1=s=>s?`, from pack ${s}`:"",wr=matchMedia("print"),M4=46,q4=50,C4=150,_c=class extends w({matrix:m(u),power:{type:Number},shows:{type:String},band:{type:String,reflect:!0},marked:{type:Boolean},opened:{...m(u),hasChanged:(e,t)=>e.family!==t?.family||e.column!==t?.column},outdated:{type:String},_at:x(u),_isOnPaper:x(u)}){static styles=[y,...B1,ae];constructor(){super(),this.opened={},this.band="",this.outdated="",this._at=[0,0],this._isOnPaper=wr.matches,this._turned=()=>this._isOnPaper=wr.matches,this._printed=()=>this._layOnPaper(),this._watch=new ResizeObserver(()=>this._measure()),this._scrolled=()=>this._carry()}connectedCallback(){super.connectedCallback(),this._watch.observe(this),this._turned(),wr.addEventListener("change",this._turned),window.addEventListener("beforeprint",this._printed),window.addEventListener("afterprint",this._turned),window.addEventListener("scroll",this._scrolled,{passive:!0})}disconnectedCallback(){super.disconnectedCallback(),clearTimeout(this._rest),this._watch.disconnect(),wr.removeEventListener("change",this._turned),window.removeEventListener("beforeprint",this._printed),window.removeEventListener("afterprint",this._turned),window.removeEventListener("scroll",this._scrolled)}willUpdate(){let[e,t]=this._at,[n,a]=[this.matrix.families.length,this._columns.length];(e>=n||t>=a)&&(this._at=[Math.min(e,n-1),Math.min(t,a-1)])}firstUpdated(){H1(N(this.renderRoot,".frame"),e=>this.band&&$(this,"jw-step",{step:e}))}updated(e){this._write(),clearTimeout(this._rest),this._rest=setTimeout(()=>this._name(),C4);let t=e.get("matrix")?.columns.length!==this.matrix.columns.length;(e.has("band")||e.has("matrix")&&t)&&this._measure()}render(){let{families:e}=this.matrix,t=this._columns;return l`<p id="outdated" role="status">${this.outdated}</p>
    <div class="frame" style="--columns:${t.length}">
      <table role="grid" aria-describedby="outdated" ?data-outdated=${this.outdated!==""} data-power=${this.power}
        aria-label=${this._caption} @keydown=${this._pressed} @click=${this._clicked} @focusin=${this._focused}>
        <thead>
          <tr>
            <th><span class="unseen">Connector</span></th>
            ${t.map((n,a)=>this._columnHead(n,a))}
          </tr>
        </thead>
        <tbody>
          ${e.map((n,a)=>l`<tr>${this._familyHead(n,a)}${t.map(()=>l`<td tabindex="-1"></td>`)}</tr>`)}
        </tbody>
      </table>
    </div>`}get _caption(){return`Connectors against bands: ${this.shows==="margin"?`margin in dB at ${C(this.power)}`:"largest safe power, in W"}`}get _columns(){let{columns:e}=this.matrix,t=e.filter(({id:n})=>n===this.band);return t.length>0?t:e}_columnHead(e,t){let[n,...a]=e.name.split(" ");return l`<th scope="col" data-band=${e.id}>
      <button tabindex=${this._tab(-1,t)} aria-label="${e.name}, all limits${U1(e.pack)}">
        <span>${n} <small>${a.join(" ")}${ml(e.pack)}</small></span>
      </button>
    </th>`}_familyHead(e,t){return l`<th scope="row" data-family=${e.id}>
      <button tabindex=${this._tab(t,-1)} aria-label="${e.name}, data sheet${U1(e.pack)}">
        <span>${e.name}${ml(e.pack)}</span>
        <span class="powers" aria-hidden="true">
          ${this.matrix.powers_w.map(n=>l`<span ?data-chosen=${n===this.power}>${C(n)}</span>`)}
        </span>
      </button>
    </th>`}_tab(e,t){return e===this._at[0]&&t===this._at[1]?0:-1}get _table(){return N(this.renderRoot,"table")}_eachCell(e){let{columns:t,families:n}=this.matrix,a=this._columns.map(r=>t.indexOf(r)),i=this._table.tBodies[0].children;for(let r=0;r<n.length;r++){let o=i[r].firstElementChild;for(let d of a)o=o.nextElementSibling,e(o,r,d)}}_write(){let{matrix:e,opened:t,power:n,shows:a}=this,{columns:i,families:r,powers_w:o}=e,d=o.indexOf(n),c=e.margin_db===void 0||d===-1,h=(_,g)=>o.map((v,k)=>$e(e,_,g,k));this._eachCell((_,g,v)=>{let[k,S]=[r[g].id,i[v].id];(_.dataset.family!==k||_.dataset.band!==S)&&Object.assign(_.dataset,{family:k,band:S});let E=k===t.family;if(_.toggleAttribute("data-open",E&&S===t.column),c)P1(_);else if(this._isOnPaper)W1(_,h(g,v),d,this.marked);else{let q=$e(e,g,v,d);E||this.marked?I1(_,h(g,v),d,fl(q,a)):bc(_,q,fl(q,a))}});for(let _ of this._table.querySelectorAll('td[tabindex="0"]'))_.setAttribute("tabindex","-1");let f=this._place(this._at);f instanceof HTMLTableCellElement&&(f.tabIndex=0)}_name(){let{matrix:e}=this,t=e.powers_w.indexOf(this.power);e.margin_db===void 0||t===-1||this._eachCell((n,a,i)=>n.setAttribute("aria-label",Zp($e(e,a,i,t))))}_layOnPaper(){this._isOnPaper=!0,this.isUpdatePending&&this.performUpdate()}_measure(){let e=parseFloat(getComputedStyle(this._table).minWidth)||0;this.toggleAttribute("fits",e<=this.clientWidth),this._carry()}_carry(){let e=N(this.renderRoot,".frame"),{top:t,height:n}=e.getBoundingClientRect(),a=n-M4-q4;e.style.setProperty("--lift",`${this.hasAttribute("fits")?0:Math.max(0,Math.min(-t,a))}px`)}_pressed(e){if(e.key==="Enter"||e.key===" ")return e.target.matches("td")?(e.preventDefault(),this._open(e.target)):void 0;let t=L1(e,this._at,this.matrix.families.length,this._columns.length);t!==void 0&&(e.preventDefault(),this._place(t)?.focus())}_place([e,t]){let n=this._table.rows[e+1]?.cells[t+1];return n?.querySelector("button")??n}_placeOf(e){let t=e.closest("td, th");return[t.parentElement.rowIndex-1,t.cellIndex-1]}_focused({target:e}){let[t,n]=this._placeOf(e);(t!==this._at[0]||n!==this._at[1])&&(this._at=[t,n])}_clicked({target:e}){let t=e.closest("td, button");t&&this._open(t)}_open(e){let[t,n]=this._placeOf(e),a={family:this.matrix.families[t],column:this._columns[n],power:this.power};$(this,"jw-open",a)}};customElements.define("jw-matrix",_c);var wc=class extends w({powers:m(u),chosen:{type:Number},shows:{type:String},marked:{type:Boolean}}){static styles=[y,b`
      :host { display: flex; flex-wrap: wrap; gap: var(--space-2) var(--space-4); align-items: end; }
      fieldset { margin: 0; padding: 0; border: 0; min-width: 0; }
      legend { font-size: var(--type-small); font-weight: 600; padding: 0; margin-bottom: var(--space-1); }
      div { display: flex; flex-wrap: wrap; }
      label {
        display: grid; place-items: center; min-height: var(--target); min-width: var(--target);
        padding: 0 var(--space-3);
        border: 1px solid var(--edge); margin-left: -1px; background: var(--card); cursor: pointer; white-space: nowrap;
      }
      label:first-of-type { border-radius: var(--round) 0 0 var(--round); margin-left: 0; }
      label:last-of-type { border-radius: 0 var(--round) var(--round) 0; }
      label:has(:checked) {
        background: var(--accent); border-color: var(--accent); color: var(--accent-ink); position: relative;
      }
      label:has(:focus-visible) {
        outline: 3px solid var(--focus); outline-offset: 2px; z-index: 1; position: relative;
      }
      input { position: absolute; opacity: 0; pointer-events: none; }
      @media (max-width: 420px) { label { padding: 0 var(--space-2); font-size: var(--type-small); } }
    `];render(){let e=[["margin","margin"],["largest","largest power"]];return l`<fieldset id="power_w">
        <legend>Power shown</legend>
        <div>${this.powers.map(t=>this._option("power_w",t,C(t),t===this.chosen))}</div>
      </fieldset>
      <fieldset id="shows">
        <legend>Show</legend>
        <div>${e.map(([t,n])=>this._option("shows",t,n,t===this.shows))}</div>
      </fieldset>
      <button id="marked" aria-pressed=${this.marked} @click=${this._turn}>Show marks</button>`}_option(e,t,n,a){return l`<label>
      <input type="radio" name=${e} value=${t} .checked=${a}
        @change=${()=>this._change({[e]:t})}>${n}
    </label>`}_turn(){$(this,"jw-marked",{marked:!this.marked})}_change(e){$(this,"jw-change",{changes:e,live:!1})}};customElements.define("jw-power-choice",wc);var yr=[["bands","Bands and powers",["powers_w","power_is","region","frequencies_hz","bands"]],["families","Connectors",["families"]],["keying","Keying",["keying","transmit_share","on_time_s","off_time_s"]],["line","Line and cable",["system_impedance_ohm","return_loss_asked_db","cable","cable_diameter_m"]],["site","Site",["solar_irradiance_w_per_m2","altitude_m","vibration","added_sealing"]],["wear","Wear",["matings_per_year","service_life_years","added_resistance_ohm"]]],R4=[{words:"all",value:null}],F1=["mode","vswr","ambient_temperature_c","exposure","condition"],N4={mode:{transmit_share:null,on_time_s:null,off_time_s:null},share:{transmit_share:.5,on_time_s:null,off_time_s:null},overs:{transmit_share:null,on_time_s:60,off_time_s:60}},yc=class extends w({state:m(u),refusal:m(u),_open:x(u),_isMore:x(u),_unfolded:{type:Boolean,attribute:"unfolded",reflect:!0}},O){static styles=[y,b`
      :host { container-type: inline-size; }
      .fields {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(150px, 1fr)); gap: var(--space-1) var(--space-3);
      }
      .always { grid-template-columns: 1.4fr 1.35fr 1.35fr 1.2fr 1.2fr; }
      label { display: block; font-size: var(--type-small); font-weight: 600; margin-bottom: var(--space-1); }
      /* a slider needs room for a finger to aim: three fields side by side, then two */
      @container (max-width: 1170px) {
        .always { grid-template-columns: repeat(6, 1fr); }
        .always > * { grid-column: span 2; }
        .always > :nth-child(n + 4) { grid-column: span 3; }
      }
      .wide { grid-column: 1 / -1; }
      .double { grid-column: span 2; }
      .groups { margin-top: var(--space-1); display: flex; flex-wrap: wrap; gap: var(--space-2); }
      .groups .changed::after { content: ' •'; font-weight: 700; }
      .groups [aria-expanded='true'].changed::after { color: inherit; }
      .group {
        margin-top: var(--space-2); padding: var(--space-3) var(--space-3) var(--space-1); background: var(--sunk);
        border-radius: var(--round);
      }
      #conditions { display: none; }
      @media (max-width: 720px) {
        #conditions {
          display: grid; width: 100%; padding: 6px 36px 6px 12px; text-align: left; border: 0; position: relative;
        }
        #conditions::after { content: '▾'; position: absolute; right: 14px; top: 50%; translate: 0 -50%; }
        #conditions[aria-expanded='true']::after { content: '▴'; }
        #conditions small { opacity: 0.8; font-size: var(--type-fine); line-height: 1.3; }
        #conditions-form { padding: var(--space-2) var(--space-3); }
        :host(:not([unfolded])) #conditions-form { display: none; }
        .always { grid-template-columns: 1fr 1fr; }
        .always > :nth-child(2), .always > :nth-child(3) { grid-column: 1 / -1; }
        .always > :nth-child(n + 4) { grid-column: auto; }
      }
      @media (max-width: 420px) { .double { grid-column: 1 / -1; } }
    `];constructor(){super(),this._open="",this._isMore=!1,this._unfolded=!1}willUpdate(e){if(!e.has("refusal")||!this.refusal)return;let t=yr.find(([,,n])=>n.includes(this._refused));t&&([this._open,this._isMore]=[t[0],!0]),this._refused in this.state&&(this._unfolded=!0)}render(){let e=yr.find(([t])=>t===this._open);return l`<button id="conditions" aria-expanded=${this._unfolded} aria-controls="conditions-form"
        @click=${()=>this._unfolded=!this._unfolded}>
        <span>Conditions</span><small>${F1.map(t=>this._inWords(t)).join(" · ")}</small>
      </button>
      <div id="conditions-form">
      <div class="fields always">${F1.map(t=>this._field(t))}</div>
      <div class="groups">
        ${this._button("more","More settings",this._isMore,yr.flatMap(([,,t])=>t),()=>this._more())}
        <div class="groups" id="more" role="group" aria-label="More settings">${this._isMore?yr.map(([t,n,a])=>this._button("group",n,t===this._open,a,()=>this._toggle(t))):p}</div>
      </div>
      <div id="group" class=${e?"fields group":""}>
        ${e?e[2].map(t=>this._field(t)):p}
      </div>
      </div>`}_button(e,t,n,a,i){return l`<button aria-expanded=${n} aria-controls=${e}
      class=${a.some(r=>this._differs(r))?"changed":""} @click=${i}>${t}</button>`}_more(){this._isMore=!this._isMore,this._open=""}get _refused(){return be(this.refusal)}get _bands(){return this.vocabulary.lists.bands.map(e=>({...e,hidden:!e.regions.includes(String(this.state.region))}))}get _sets(){let e=this._bands.filter(({hidden:t})=>!t).map(({id:t})=>t);return[{words:"usual sixteen",value:this.vocabulary.first.matrix.bands},{words:"all",value:e}]}get _keying(){return this.state.transmit_share!==null?"share":this.state.on_time_s===null&&this.state.off_time_s===null?"mode":"overs"}_differs(e){return e in this.state&&JSON.stringify(this.state[e])!==JSON.stringify(this.vocabulary.first.matrix[e])}_field(e){let t=this.state[e],n=this.refusal&&this._refused===e?this.refusal.message:"";return e==="keying"?this._keyingField():e==="transmit_share"&&this._keying!=="share"?p:e.endsWith("time_s")&&this._keying!=="overs"?p:e==="cable_diameter_m"&&this.state.cable!==null?p:e==="bands"?l`<jw-toggles-field class="wide" name="bands" of=" of Region ${this.state.region}"
        .choices=${this._bands} .sets=${this._sets}
        hint="National limits differ from the Region’s edges; yours decide." .value=${t}
        .error=${n}></jw-toggles-field>`:e==="families"?l`<jw-toggles-field class="wide" name="families" .choices=${this.vocabulary.lists.families}
        .sets=${R4}
        hint="Pick those you own or can buy; the others leave the table." .value=${t}
        .error=${n}></jw-toggles-field>`:e==="powers_w"?l`<jw-list-field class="double" name="powers_w" zero="receive" .value=${t}
        .error=${n}></jw-list-field>`:e==="frequencies_hz"?l`<jw-list-field class="double" name="frequencies_hz" .value=${t} .error=${n}></jw-list-field>`:e==="added_sealing"?l`<jw-switch-field name="added_sealing" .value=${t} .error=${n}></jw-switch-field>`:typeof this.vocabulary.first.matrix[e]=="string"||e==="region"||e==="cable"?l`<jw-choice-field class=${e==="cable"?"double":""} name=${e} .value=${t}
        .error=${n} .hint=${this._hint(e)}></jw-choice-field>`:l`<jw-number-field name=${e} .value=${t} .error=${n}></jw-number-field>`}_inWords(e){let t=this.vocabulary.spoken(e,this.state[e]);return e==="vswr"?`SWR ${t}`:t}_hint(e){let t=this.vocabulary.lists.modes.find(({id:n})=>n===this.state.mode);return e==="mode"&&t?`duty factor ${t.duty_factor.value}`:""}_keyingField(){return l`<div class="double">
      <label for="keying">How long it is on the air</label>
      <select id="keying" @change=${this._rekey}>
        ${[["mode","the mode’s own rhythm"],["share","a share of the time"],["overs","overs and pauses"]].map(([e,t])=>l`<option value=${e} .selected=${e===this._keying}>${t}</option>`)}
      </select>
    </div>`}_rekey(e){let t={changes:N4[e.target.value],live:!1};this.dispatchEvent(new CustomEvent("jw-change",{detail:t,bubbles:!0,composed:!0}))}_toggle(e){this._open=this._open===e?"":e}};customElements.define("jw-scenario",yc);var vc=class extends w({state:m(u)},O){static styles=[y,b`
      dl { columns: 4; column-gap: 5mm; font-size: var(--type-fine); line-height: 1.3; }
      div { break-inside: avoid; }
      dt, dd { display: inline; }
      dt { color: var(--soft); }
      dt::after { content: ': '; }
    `];render(){let e=Object.keys(this.vocabulary.words).filter(t=>(this.state[t]??[]).length!==0);return l`<dl>
      ${e.map(t=>l`<div><dt>${this.vocabulary.labelOf(t)}</dt><dd>${this.vocabulary.spoken(t,this.state[t])}</dd
            ></div>`)}
    </dl>`}};customElements.define("jw-summary",vc);var L4=3;function z4(s){let e=10**(Math.floor(Math.log10(s))-L4+1),t=Math.floor(s/e*(1+1e-9))*e;return t>=1e3?`${j(t/1e3)} kW`:C(t)}var $c=class extends w({answer:m(u),waiting:{type:String},outdated:{type:Boolean,reflect:!0}}){static styles=[y,R(z),b`
      :host { display: grid; gap: var(--space-2); align-content: start; min-height: 15rem; }
      :host([outdated]) { opacity: 0.6; }
      .verdict { display: flex; flex-wrap: wrap; gap: var(--space-2) var(--space-3); align-items: center; }
      strong { padding: var(--space-1) var(--space-3); border-radius: var(--round); font-size: var(--type-lead); }
      [data-step='refused'] { background: var(--refused); color: var(--refused-ink); }
      dl {
        display: grid; grid-template-columns: auto minmax(0, 1fr); gap: var(--space-half) var(--space-3);
        font-size: var(--type-text);
      }
      dt { color: var(--soft); }
      ul { list-style: none; margin: 0; padding: 0; display: grid; gap: var(--space-1); }
      li { display: grid; gap: 0 var(--space-2); }
      li button { text-align: left; padding: var(--space-1) var(--space-3); line-height: 1.3; display: grid; }
      li small { color: var(--soft); font-size: var(--type-small); }
      h3 { font-size: var(--type-text); }
      @media (min-width: 700px) {
        :host { min-height: 8.2rem; }
        ul { grid-template-columns: repeat(auto-fill, minmax(250px, 1fr)); }
      }
      @media (max-width: 480px) {
        dl { grid-template-columns: minmax(0, 1fr); }
        dd { margin-bottom: var(--space-1); }
      }
    `];constructor(){super(),this.waiting="",this.outdated=!1}render(){let e=this.answer?.verdict;if(!this.answer||!e)return l`<p class="quiet" role="status">${this.waiting}</p>`;let{better:t,doubts:n,largest_power_w:a,limited_by:i}=this.answer;return l`<div class="verdict" role="status"><strong data-step=${this._step}
        data-verdict=${e.step}>${e.headline}</strong><button class="why"
        @click=${()=>$(this,"jw-why",{})}>Why</button><p>${e.sentence}</p></div>
      <dl>
        ${a===null?p:l`<dt>Largest safe power</dt><dd id="largest">${z4(a)}</dd>`}
        ${i&&!e.sentence.includes(i.sentence)?l`<dt>Limited by</dt><dd id="limit">${i.sentence}</dd>`:p}
        ${n.map(({name:r,sentence:o})=>l`<dt>${r}</dt><dd>${o}</dd>`)}
      </dl>
      ${t.length>0?l`<h3 id="better">Better</h3><ul aria-labelledby="better">${t.map(r=>l`<li><button @click=${()=>$(this,"jw-ask",{values:r.changes})}
                ><b>${r.title}</b><small>${r.sentence}</small></button></li>`)}</ul>`:p}
    `}get _step(){let{margin_db:e,verdict:t}=this.answer;return t?.step==="refused"?"refused":e===null?"holds":G(e)}};customElements.define("jw-answer",$c);var P4=[0,5,10,25,50,100,200,400,500,750,1e3,1500],I4=[1,1.2,1.5,2,2.5,3,4,5,10],vr=" Hz",W4=[["indoor","indoors"],["sheltered","sheltered"],["exposed","outdoors"],["immersed","under water"]],B4=s=>s>=1e3?`${j(s/1e3)} kW`:C(s),xc=class extends w({state:m(u),cell:m(u)},O){static styles=[y,b`
      p { font-size: var(--type-lead); line-height: 44px; }
      span { white-space: nowrap; }
      select.word {
        appearance: none; width: auto; max-width: 100%; field-sizing: content; min-height: var(--target);
        padding: 0 1.05em 0 var(--space-half); border: 0; border-radius: 0; font: inherit; font-weight: 650;
        line-height: 1.2;
        cursor: pointer; background: linear-gradient(var(--edge) 0 0) 0 calc(50% + 0.75em) / 100% 2px no-repeat;
      }
      select.word option { background: var(--card); color: var(--ink); font-weight: 400; }
      .menu { position: relative; }
      .menu::after {
        content: '▾'; position: absolute; right: 2px; top: 0; line-height: 1.2; pointer-events: none;
        color: var(--soft); font-size: var(--type-fine);
      }
      @media (max-width: 480px) { p { font-size: var(--type-lead); } }
    `];render(){let{cell:e,state:t,vocabulary:n}=this,{lists:a}=n,i=a.families.map(({id:g,name:v})=>[g,H.question.families[g]??v]),r=a.modes.map(({id:g,name:v})=>[g,H.question.modes[g]??v]),o=a.bands.filter(({regions:g})=>g.includes(String(t.region))).map(({id:g,name:v})=>[g,v]),d=[...new Set([...t.frequencies_hz,e.frequency_hz??[]].flat())],c=[...o,...d.map(g=>[`${g}${vr}`,M(g)])],f=[...t.powers_w,t.power_w].reduce(_e,P4).map(g=>[g,g===0?"no power (receive)":B4(g)]),_=_e(I4,t.vswr).map(g=>[g,j(g)]);return l`<p role="group" aria-label="The question">
      ${this._menu("family","Connector",i,e.family)}
      <span>with ${this._menu("power_w","Power",f,t.power_w,Number)}</span>
      ${this._menu("mode","Mode",r,t.mode)}
      <span>on ${this._menu("column","Band",c,e.band??`${e.frequency_hz}${vr}`)},</span>
      <span>SWR ${this._menu("vswr","SWR",_,t.vswr,Number)},</span>
      ${this._menu("exposure","Where it is",W4,t.exposure)}
    </p>`}_menu(e,t,n,a,i=String){let r=n.some(([o])=>o===a)?n:[...n,[a,String(a)]];return l`<span class="menu"><select class="word" aria-label=${t} data-name=${e}
      @change=${o=>this._chose(e,i(o.target.value))}>
      ${r.map(([o,d])=>l`<option value=${o} .selected=${o===a}>${d}</option>`)}
    </select></span>`}_chose(e,t){$(this,"jw-ask",{values:e==="column"?H4(t):{[e]:t}})}},H4=s=>s.endsWith(vr)?{frequency_hz:Number(s.slice(0,-vr.length))}:{band:s};customElements.define("jw-sentence",xc);function D1(s,e){let t=s.split(/(?<=\s)/);for(let n=Math.min(t.length,3);n>0;n--){let a=t.slice(-n).join("").toLowerCase(),i=e.filter(r=>a.trim()!==""&&r.toLowerCase().startsWith(a));if(i.length>0)return i.slice(0,8).map(r=>t.slice(0,-n).join("")+r)}return[]}var U4=H.requests.question.text.longest,kc=class extends w({unread:m(u),missing:m(u),busy:{type:Boolean},problem:{type:String},_offers:x(u)}){static styles=[y,b`
      form { display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: var(--space-2); }
      #text { font-size: var(--type-text); }
      ul {
        list-style: none; margin: var(--space-2) 0 0; padding: 0; display: grid; gap: var(--space-1);
        font-size: var(--type-text);
      }
      li { display: flex; flex-wrap: wrap; gap: var(--space-1) var(--space-2); align-items: center; }
    `];constructor(){super(),this.unread=[],this.missing=[],this.problem="",this._offers=[]}render(){let e=[...this.missing,this.problem].filter(Boolean);return l`<form @submit=${this._submitted}>
        <label class="unseen" for="text">Or type the question</label>
        <input id="text" type="text" list="offers" autocomplete="off" autocapitalize="off" spellcheck="false"
          maxlength=${U4} enterkeyhint="go" placeholder="or type it: so239 1kw ft8 10m swr 3"
          aria-describedby="unread" aria-invalid=${e.length>0?"true":"false"}
          @input=${this._typed}>
        <datalist id="offers">${this._offers.map(t=>l`<option value=${t}></option>`)}</datalist>
        <button class="primary" aria-busy=${this.busy?"true":"false"}>Answer</button>
      </form>
      <div id="unread" role="status">${this.unread.length+e.length>0?l`<ul>
              ${this.unread.map(t=>this._unread(t))}
              ${e.map(t=>l`<li>${t}</li>`)}
            </ul>`:p}</div>`}_unread({typed:e,words:t,near:n}){let a=t.includes(e)?t:`“${e}”: ${t}`;return l`<li><span>${a}</span>${n.map(i=>l`<button type="button" @click=${()=>this._put(e,i)}>${i}</button>`)}</li>`}get _field(){return N(this.renderRoot,"#text")}_typed(){this._offers=D1(this._field.value,H.question.names)}_submitted(e){e.preventDefault(),$(this,"jw-type",{text:this._field.value})}_put(e,t){this._field.value=this._field.value.replace(e,()=>t),$(this,"jw-type",{text:this._field.value}),this._field.focus()}};customElements.define("jw-typed-question",kc);var F4=200,G1={asked:null,sentence:"",read:[],unread:[],missing:[],verdict:null,margin_db:null,largest_power_w:null,limited_by:null,doubts:[],better:[]},Sc=class extends w({state:m(u),transport:m(u),stage:{type:String},_cell:x(u),_typed:x(u)},O){static styles=[y,b`
      :host {
        display: grid; gap: var(--space-2); padding: var(--space-2) var(--space-3) var(--space-3);
        background: var(--card);
        border: 1px solid var(--line); border-radius: var(--round);
      }
      jw-answer { margin-top: var(--space-1); }
      .onpaper { display: none; }
      @media print {
        :host { padding: 0; border: 0; }
        :host(:not([chosen])), jw-sentence, jw-typed-question, jw-answer { display: none; }
        .onpaper { display: block; font-size: var(--type-text); }
      }
    `];constructor(){super(),this.stage="",this._cell=cr,this._typed=G1,this._answer=new pe(this,(e,t)=>this.transport.ask("question",e,t)),this._reader=new pe(this,(e,t)=>this.transport.ask("question",e,t))}disconnectedCallback(){super.disconnectedCallback(),clearTimeout(this._rest),this._asked=void 0}willUpdate(e){e.has("state")&&(this._cell=Xd(this.state)??this._cell)}updated(){this.toggleAttribute("chosen",Xd(this.state)!==void 0);let e=Zd(this.state,this._cell),t=JSON.stringify(e);this.transport===void 0||t===this._asked||(this._asked=t,clearTimeout(this._rest),this._rest=setTimeout(()=>this._answer.askNext(e),F4))}render(){let{error:e,result:t}=this._answer,{unread:n,missing:a}=this._typed;return l`<h2 class="unseen">Ask about one joint</h2>
      <jw-sentence .state=${this.state} .cell=${this._cell} @jw-ask=${this._chosen}></jw-sentence>
      <jw-typed-question .unread=${n} .missing=${a} .problem=${this._reader.error?.message??""}
        ?busy=${this._reader.status==="pending"} @jw-type=${this._type}></jw-typed-question>
      <jw-answer .answer=${e?void 0:t} ?outdated=${this._isOutdated} .waiting=${this._waiting}
        @jw-ask=${this._chosen} @jw-why=${this._why}></jw-answer>
      ${t?.verdict&&!e?this._onPaper(t):p}`}_onPaper({sentence:e,verdict:t,limited_by:n}){let a=`${e}: ${t?.headline}. ${t?.sentence}`,i=n&&!a.includes(n.sentence)?` ${n.sentence}`:"";return l`<p class="onpaper">${a}${i}</p>`}get _isOutdated(){let{answered:e}=this._answer;return e!==void 0&&JSON.stringify(e)!==this._asked}get _waiting(){return this._answer.error?this._answer.error.message:this.stage===St||this.stage===""?"Calculating…":"The core is starting; the answer comes by itself."}_chosen(e){this._typed=G1,this._change(e.detail.values)}async _type(e){let{text:t}=e.detail;await this._reader.ask({...Zd(this.state,this._cell),text:t});let{answered:n,error:a,result:i}=this._reader;a||i===void 0||n.text!==t||(this._typed=i,i.asked&&i.read.length>0&&this._change(Object.fromEntries(i.read.map(({field:r,value:o})=>[r,o]))))}_change(e){let{most:t}=this.vocabulary.fieldOf("powers_w"),n=_1(e,this._cell,this.state,this.vocabulary.lists,Number(t));$(this,"jw-asked",{changes:n})}_why(e){e.stopPropagation(),$(this,"jw-why",{cell:this._cell})}};customElements.define("jw-question",Sc);var D4=[["family",s=>s.family.name],["band",s=>s.column.name],["low_hz",s=>s.column.low_hz],["high_hz",s=>s.column.high_hz],["power_w",s=>s.power],["margin_db",s=>s.margin],["margin_high_db",s=>s.high],["set_by",s=>s.limit],["return_loss_db",s=>s.returnLoss],["return_loss_high_db",s=>s.returnLossHigh],["computed_at_hz",s=>s.column.high_hz],["undecided",s=>s.undecided],["refused_by",s=>s.refusedBy?.name],["marks",s=>s.marks.map(e=>e.name).join("; ")],["figure_from_memory_is_lower",s=>s.lowerFromMemory],["largest_power_w",s=>s.largest],["family_from_pack",s=>s.family.pack],["band_from_pack",s=>s.column.pack]];function K1(s){let e=s.families.flatMap((t,n)=>s.columns.flatMap((a,i)=>s.powers_w.map((r,o)=>$e(s,n,i,o))));return Rt(D4,e)}var V1=s=>K("jointwise-matrix.csv","text/csv",K1(s)),Y1=(s,e)=>qs("jointwise-matrix.json",{request:Ao(e,Ns()),result:s});var $r=matchMedia("screen and (max-width: 600px)"),ca=class extends w({loadCharts:m(u),loadEmbed:m(u),_isMarked:x(u),_isNarrow:x(u),_isWhole:x(u),_band:x(u)},Ze){static view="matrix";static ownNames=["families","frequencies_hz","powers_w","shows","view","family","band","frequency_hz"];constructor(){super(),this._isMarked=!1,this._isNarrow=$r.matches,this._isWhole=!1,this._band=cr.band,this._resized=()=>this._isNarrow=$r.matches,this._matrix=this._enquiry("matrix"),this._cell=this._enquiry("cell"),this._catalogue=this._enquiry("catalogue")}_askAnew(){super._askAnew(),this._cellAsked=void 0}connectedCallback(){super.connectedCallback(),$r.addEventListener("change",this._resized)}disconnectedCallback(){super.disconnectedCallback(),$r.removeEventListener("change",this._resized)}createRenderRoot(){return this}willUpdate(e){super.willUpdate(e);let t=sn(this._state,this._shown)?.id;t!==void 0&&t!==this._openBefore&&(this._band=t),this._openBefore=t}updated(e){if(this.transport===void 0)return;let t=JSON.stringify(this._state);(t!==this._stateAsked||this._asked===void 0||e.has("transport"))&&this._askAll(),this._stateAsked=t}render(){let{_state:e,_shown:t}=this,n=ur(e),a=sn(e,t);return l`<div @jw-change=${this._changed} @jw-open=${this._opened}
        @jw-close=${this._closed}>
      ${this._progress(this._matrix)}
      <main>
        ${this._trouble()}
        <jw-question .state=${e} .transport=${this.transport} .stage=${this.stage}
          @jw-asked=${({detail:i})=>this._choose(i.changes)} @jw-why=${this._explained}></jw-question>
        <jw-scenario .state=${e} .refusal=${this._matrix.error}></jw-scenario>
        <div class="bar">
          <jw-power-choice .powers=${t.powers_w} .chosen=${this._power} .shows=${e.shows}
            ?marked=${this._isMarked} @jw-marked=${({detail:i})=>this._isMarked=i.marked}></jw-power-choice>
        </div>
        <h2 class="onpaper">${this._onPaper}</h2>
        ${this._isNarrow?l`<jw-bands .columns=${t.columns} band=${this._alone} @jw-band=${this._stepped}
              @jw-whole=${({detail:i})=>this._isWhole=i.whole}></jw-bands>`:p}
        <jw-key></jw-key>
        <jw-matrix .matrix=${t} .power=${this._power} .shows=${e.shows} .outdated=${this._outdated}
          band=${this._alone} @jw-step=${this._stepped} ?marked=${this._isMarked}
          .opened=${{family:e.family,column:a?.id}}></jw-matrix>
        <section class="below">
          ${this._isMarked||e.family?l`<jw-marks .matrix=${t} .power=${this._power} ?all=${this._isMarked}
                family=${e.family??""} column=${a?.id??""}></jw-marks>`:p}
          <jw-summary class="onpaper" .state=${this._computed}></jw-summary>
          <jw-cautions .cautions=${H.cautions}></jw-cautions>
        </section>
        ${this._withoutCore?l`<section class="tables"><slot></slot></section>`:p}
      </main>
      <jw-sheet .heading=${k1(n,e,t,this.vocabulary.lists)}>
        ${n?l`<jw-detail .kind=${n} .state=${e} .matrix=${t} .cell=${this._wantedCell}
              .catalogue=${this._catalogue.result} .error=${this._cell.error??this._catalogue.error}
              .power=${this._power} .loadCharts=${this.loadCharts} .loadEmbed=${this.loadEmbed}
              .transport=${this.transport}></jw-detail>`:p}
      </jw-sheet>
    </div>`}get _alone(){let{columns:e}=this._shown;return!this._isNarrow||this._isWhole?"":(e.find(({id:t})=>t===this._band)??e[0]).id}_stepped({detail:{band:e,step:t}}){let{columns:n}=this._shown,a=n.findIndex(({id:i})=>i===this._alone);this._band=e??n[a+t]?.id??this._band}get _shown(){return this._matrix.result??x1(this._state,this._refused,this.vocabulary)}get _refused(){return this._matrix.error!==void 0}get _onPaper(){let e=new Intl.DateTimeFormat("en-GB",{dateStyle:"long"}).format(new Date);return`${[this.station.name,e].filter(Boolean).join(", ")}: margin in dB${this._isMarked?"; in heavy type":""} at ${C(this._power)}`}get _outdated(){return!this._refused||this._asksTheSame(this._computed,this._state)?"":this._matrix.result?"Out of date: these are the numbers from before the change that could not be computed.":"Not what was asked for, which could not be computed: these are the built-in numbers of a first visit."}_asksTheSame(...e){let[t,n]=e.map(a=>JSON.stringify(Ie(a,this.vocabulary)));return t===n}get _withoutCore(){return this._matrix.result===void 0&&ra(this._matrix.error)}get _power(){return In(this._shown.powers_w,this._state.power_w)}get _computed(){let{answered:e}=this._matrix;return!e&&!this._refused?this._state:{...this._first,power_w:this._state.power_w,...e}}get _wantedCell(){let{answered:e,result:t}=this._cell;return e&&tc(e,this._state)?t:void 0}_trouble(){let{error:e}=this._matrix;return!e||be(e)in this.vocabulary.words?p:l`<p class="trouble" role="alert">${e.message} <button
      @click=${()=>this._askAll(!0)}>Try again</button></p>`}_askAll(e=!1){let t=Ie(this._state,this.vocabulary),n=JSON.stringify(t);(e||n!==this._asked)&&this._matrix.askNext(t),this._asked=n;let a=ur(this._state);a&&a!=="website"&&["initial","error"].includes(this._catalogue.status)&&this._catalogue.ask({}),a==="derivation"&&this._askCell()}_askCell(){let e=oa({...this._state,power_w:this._power}),t=this._cellAsked;this._cellAsked=e,!(t&&this._cell.status!=="error"&&JSON.stringify(t)===JSON.stringify(e))&&(t&&tc(t,this._state)?this._cell.askNext(e):this._cell.ask(e))}get _state(){let e=super._state,{power_w:t}=this.station.settings;return t===void 0?e:{...e,powers_w:_e(e.powers_w,t)}}_changed(e){let{changes:t,live:n}=e.detail,{power_w:a}=this.station.settings,i=t.powers_w&&a!==void 0&&!t.powers_w.includes(a);this._change(i?{...t,power_w:In(t.powers_w,a)}:t,n)}_show(e){this._change(e,{isStep:!1})}_opened(e){let{family:t,column:n,power:a}=e.detail,i=n!==void 0&&ec(n);this._isAsked=!1,this._show({...bs,family:t?.id??null,band:n===void 0||i?null:n.id,frequency_hz:i?n.low_hz:null,power_w:a})}_choose(e){this._isAsked=!0,this._change(e)}_explained(e){this._isAsked=!0,this._show({...bs,...e.detail.cell})}_closed(){this._show(this._isAsked&&ur(this._state)==="derivation"?{view:gs}:bs)}openMethods(){this._show({view:"methods"})}_readOwn(e,t,n){return Os(e.replace(/(^|&)view=matrix(?=&|$)/,""),t,n)}get ways(){let[e,t]=super.ways,n=this._shown.margin_db&&this._shown,a=Ie(this._computed,this.vocabulary);return[e,{id:"csv",words:"Save as CSV",run:()=>this._withAnswer(n,V1)},{id:"json",words:"Save as JSON",run:()=>this._withAnswer(n,i=>Y1(i,a))},t,{id:"website",words:"Put on a website",run:()=>this._show({...bs,view:"website"})}]}};customElements.define("jw-matrix-view",ca);var J1=({bands:s,cables:e,conditions:t,families:n,modes:a})=>({region:{label:"ITU Region",options:{1:"Region 1",2:"Region 2",3:"Region 3"}},families:{label:"Connectors",named:n},bands:{label:"Bands",named:s},frequencies_hz:{label:"Spot frequencies",factor:1e6,unit:"MHz"},powers_w:{label:"Power levels",unit:"W"},power_w:{label:"Power shown"},power_is:{label:"Powers are",options:{forward:"forward power",net:"net power (forward less reflected)"}},mode:{label:"Mode",entries:a},transmit_share:{label:"Share on the air",step:.01},on_time_s:{label:"One over",step:.01},off_time_s:{label:"Pause after it",step:.01},vswr:{label:"SWR on the line",step:.1,slider:"logarithmic"},system_impedance_ohm:{label:"Line impedance",step:1},return_loss_asked_db:{label:"Return loss asked for",step:.5},cable:{label:"Cable",options:fe("the usual one of each connector",e)},cable_diameter_m:{label:"Other cable, diameter",step:.1,factor:.001,unit:"mm"},ambient_temperature_c:{label:"Air temperature",step:1,slider:"linear"},solar_irradiance_w_per_m2:{label:"Sun on the joint",step:10},altitude_m:{label:"Altitude",step:10},exposure:{label:"Exposure",options:{indoor:"indoors",sheltered:"outdoors, sheltered",exposed:"outdoors, exposed",immersed:"under water"}},added_sealing:{label:"Sealed with tape or a boot"},vibration:{label:"Vibration",options:{none:"none",vehicle:"vehicle",severe:"severe"}},matings_per_year:{label:"Swaps per year",step:1},service_life_years:{label:"Years in service",step:1},condition:{label:"Joint condition",entries:t},added_resistance_ohm:{label:"Added contact resistance",step:.001}});var X1={id:ca.view,label:"Matrix",description:"How much power each connector takes on each band, and what limits it.",fields:w1,words:J1,element:({transport:s,stage:e,loadCharts:t,loadEmbed:n})=>l`<jw-matrix-view class="view" .transport=${s} .stage=${e}
      .loadCharts=${t} .loadEmbed=${n}></jw-matrix-view>`};/**
 * @license
 * Copyright 2017 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */var Q1=(s,e,t)=>{let n=new Map;for(let a=e;a<=t;a++)n.set(s[a],a);return n},Z1=js(class extends xt{constructor(s){if(super(s),s.type!==Qu.CHILD)throw Error("repeat() can only be used in text expressions")}dt(s,e,t){let n;t===void 0?t=e:e!==void 0&&(n=e);let a=[],i=[],r=0;for(let o of s)a[r]=n?n(o,r):r,i[r]=t(o,r),r++;return{values:i,keys:a}}render(s,e,t){return this.dt(s,e,t).values}update(s,[e,t,n]){let a=$n(s),{values:i,keys:r}=this.dt(e,t,n);if(!Array.isArray(a))return this.ut=r,i;let o=this.ut??=[],d=[],c,h,f=0,_=a.length-1,g=0,v=i.length-1;for(;f<=_&&g<=v;)if(a[f]===null)f++;else if(a[_]===null)_--;else if(o[f]===r[g])d[g]=kt(a[f],i[g]),f++,g++;else if(o[_]===r[v])d[v]=kt(a[_],i[v]),_--,v--;else if(o[f]===r[v])d[v]=kt(a[f],i[v]),ut(s,d[v+1],a[f]),f++,v--;else if(o[_]===r[g])d[g]=kt(a[_],i[g]),ut(s,a[f],a[_]),_--,g++;else if(c===void 0&&(c=Q1(r,g,v),h=Q1(o,f,_)),c.has(o[f]))if(c.has(o[_])){let k=h.get(r[g]),S=k!==void 0?a[k]:null;if(S===null){let E=ut(s,a[f]);kt(E,i[g]),d[g]=E}else d[g]=kt(S,i[g]),ut(s,a[f],S),a[k]=null;g++}else Aa(a[_]),_--;else Aa(a[f]),f++;for(;g<=v;){let k=ut(s,d[v+1]);kt(k,i[g]),d[g++]=k}for(;f<=_;){let k=a[f++];k!==null&&Aa(k)}return this.ut=r,Qt(s,d),ct}});var e2=s=>({past:[],present:s,future:[]});function jc(s,e){return e===s.present?s:{past:[...s.past,s.present].slice(-200),present:e,future:[]}}function t2({past:s,present:e,future:t}){return s.length===0?{past:s,present:e,future:t}:{past:s.slice(0,-1),present:s[s.length-1],future:[e,...t]}}function s2({past:s,present:e,future:t}){return t.length===0?{past:s,present:e,future:t}:{past:[...s,e],present:t[0],future:t.slice(1)}}var n2=b`
  .chips { min-width: 0; }
  .chips > div { display: flex; flex-wrap: wrap; gap: var(--space-1); align-items: center; }
  .chips .choice { padding: 0 var(--space-3); font-size: var(--type-text); overflow-wrap: anywhere; text-align: left; }
  .chips .more { display: flex; gap: var(--space-1); min-width: 0; }
  .chips .more :is(select, input[type='text']) { width: 11rem; flex: 0 1 11rem; }
  .label { display: block; font-size: var(--type-small); font-weight: 600; margin-bottom: var(--space-1); }
  .hint {
    display: block; margin-top: var(--space-half); font-size: var(--type-fine); line-height: 1.35; color: var(--soft);
  }
`,G4=({currentTarget:s})=>s.closest(".chips").querySelector("select, input")?.focus();function a2({label:s,hint:e="",chosen:t,put:n,offered:a,longest:i}){let r=h=>a?.find(f=>f.id===h)?.name??h,o=({currentTarget:h})=>{let f=h.closest(".more").querySelector("select, input"),_=f.value.trim();f.value="",f.focus(),_!==""&&!t.includes(_)&&n([...t,_])},d=h=>{h.key==="Enter"&&(h.preventDefault(),o(h))},c=(h,f)=>{G4(h),n(t.toSpliced(f,1))};return l`<div class="chips" role="group" aria-label=${s}>
    <span class="label" aria-hidden="true">${s}</span>
    <div>
      ${t.map((h,f)=>l`<button type="button" class="choice" aria-pressed="true" title="Take away"
          @click=${_=>c(_,f)}>${r(h)} <span aria-hidden="true">✕</span></button>`)}
      <div class="more">
        ${a?l`<select aria-label="Another for ${s}" @keydown=${d}>
              <option value="" selected>choose…</option>
              ${a.filter(({id:h})=>!t.includes(h)).map(({id:h,name:f})=>l`<option value=${h}>${f}</option>`)}
            </select>`:l`<input type="text" aria-label="Another for ${s}" autocomplete="off" maxlength=${i??80}
              @keydown=${d}>`}
        <button type="button" @click=${o}>Add <span class="unseen">to ${s}</span></button>
      </div>
    </div>
    <span class="hint">${e}</span>
  </div>`}var it=(s,e)=>e.reduce((t,n)=>t?.[n],s);function qe(s,e,t){if(e.length===0)return t;let[n,...a]=e,i=qe(s?.[n],a,t);if(Array.isArray(s)){let d=Number(n);return i===void 0?s.toSpliced(d,1):s.with(d,i)}if(i!==void 0)return{...s,[n]:i};let{[n]:r,...o}=s??{};return o}var Ke=s=>s.join("-");var _s={low:", least",high:", most"},ua=new Set(["id","source","kind","order","overrides","sources"]);function Ec({unit:s="",sheet_unit:e=s}){let[t,n]=[e,s].map(a=>ts("",a)?.factor??1);return Number((t/n).toPrecision(12))}var xr=({unit:s="",sheet_unit:e=s})=>e==="1"?"":e,i2=({type:s})=>["number","quantity","interval"].includes(s),K4=(s,{type:e})=>e==="interval"?Object.entries(_s).map(([t,n])=>[`${s}-${t}`,n]):[[s,""]];function V4(s){let e=!s.required;return i2(s)?{type:"number",nullable:e,min:s.min,max:s.max,unit:xr({unit:s.unit})}:s.type==="list"?{type:"list",items:s.of,least:s.least,most:s.most}:s.type==="boolean"?{type:"boolean"}:{type:s.choices?"choice":"text",nullable:e,longest:s.longest??200}}function Y4(s,e){let{label:t="",choices:n,required:a,of:i}=s,r=a?{}:{"":"not given"};return{label:t+e,...i2(s)?{unit:xr(s),factor:Ec(s)}:{},...i?.unit?{unit:i.unit}:{},...n?{options:{...r,...n}}:{}}}var J4=s=>s.type!=="map"&&s.type!=="part"&&s.of?.type!=="part",r2=(s,e)=>Object.entries(s).map(([t,n])=>{let a=Object.entries(n).filter(([,i])=>J4(i));return[t,a.flatMap(([i,r])=>K4(i,r).map(([o,d])=>e(o,r,d)))]}),o2=s=>Object.fromEntries(r2(s,(e,t)=>[e,V4(t)]).map(([e,t])=>[e,Object.fromEntries(t)])),l2=s=>Object.fromEntries(r2(s,(e,t,n)=>[e,Y4(t,n)]).flatMap(([e,t])=>t.map(([n,a])=>[`${e}.${n}`,a]))),an=s=>Object.entries(s.Pack).filter(([e,t])=>t.of?.type==="part"&&!ua.has(e)).map(([e,{of:t,label:n=""}])=>({table:e,part:t.of,label:n}));function ws(s,e){let t={text:()=>"",boolean:()=>!1,list:()=>[],map:()=>({}),part:({of:a})=>ws(s,a),interval:()=>({low:null,high:null})},n=Object.entries(s[e]).filter(([,{required:a}])=>a);return Object.fromEntries(n.map(([a,i])=>[a,t[i.type]?.(i)??null]))}var kr=40,d2="datasheet",X4="My own data",Sr={id:"",name:"",version:"1",sources:[]},Q4=s=>s.normalize("NFKD").toLowerCase().replace(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,kr)||"own";function ha(s,e){let t=new Set(e),n=Q4(s);if(!t.has(n))return n;for(let a=2;;a++){let i=`_${a}`,r=`${n.slice(0,kr-i.length)}${i}`;if(!t.has(r))return r}}var Z4=(s,e)=>(s[e]??[]).map(({id:t})=>t);function c2(s,e,t,n=!1){let{overrides:a={}}=s,i={...s,[e]:[...s[e]??[],t]};return n?{...i,overrides:{...a,[e]:[...a[e]??[],t.id]}}:i}function u2(s,e,t){let{id:n}=s[e][t],a=pa(e,n),{overrides:i={},sources:r}=s,o={...s,[e]:s[e].toSpliced(t,1)},d=r.filter(f=>f.id!==a||JSON.stringify(o).includes(`"source":"${a}"`)),c=i[e]?.includes(n),h=c?{...i,[e]:i[e].filter(f=>f!==n)}:i;return{...o,sources:d,...c?{overrides:h}:{}}}function h2(s,e,t,n){let a=ha(`${e.name||"own"} ${n}`.slice(0,kr-3),Z4(e,t));return{...ws(s,n),id:a,source:pa(t,a),kind:d2}}var pa=(s,e)=>`own_${s}_${e}`.slice(0,kr),p2=s=>{if(typeof s!="object"||s===null)return[];let e=Object.values(s).flatMap(p2);return typeof s.source=="string"?[s.source,...e]:e};function ys(s,e){let[t,n]=e,a=s[t][n],i=pa(t,a.id),r=new Set(s.sources.map(({id:o})=>o));return r.has(i)?i:p2(a).find(o=>r.has(o))??i}function rn(s,e){let t=ys(s,e);return s.sources.some(n=>n.id===t)?s:{...s,sources:[...s.sources,{id:t,title:X4,seen:"read"}]}}var jr=(s,e)=>s.sources.some(({id:t})=>t===e);function m2(s,e){let[t,n]=e,a=i=>{if(typeof i!="object"||i===null)return[];let r=Object.values(i).flatMap(a);return i.kind&&jr(s,i.source)?[i.kind,...r]:r};return a(s[t][n])[0]??d2}function f2(s,e,t){let[n,a]=e,i=r=>{if(Array.isArray(r))return r.map(i);if(typeof r!="object"||r===null)return r;let o=Object.fromEntries(Object.entries(r).map(([d,c])=>[d,i(c)]));return r.kind&&jr(s,r.source)?{...o,kind:t}:o};return qe(s,[n,a],i(s[n][a]))}function g2(s,e,t,n){let a=it(s,e);if(a?.value===t)return s;if(t===null)return qe(s,e,void 0);if(a&&jr(s,a.source))return qe(s,e,{...a,value:t,note:""});let i=rn(s,e);return qe(i,e,{value:t,source:ys(i,e),kind:n,note:""})}function b2(s,e,t,n){let a=qe(s,e,t),i=e.slice(0,-1),r=it(a,i);if(typeof r?.source!="string"||jr(a,r.source))return a;let o=rn(a,e);return qe(o,i,{...r,source:ys(o,e),kind:n})}function _2(s,e,t,n,a){let i=it(e,t)??[],[r,o,...d]=Object.entries(s[n]).filter(([,{type:g}])=>g==="number").map(([g])=>g),c=i.at(-1)??{},h=Object.fromEntries(d.filter(g=>g in c).map(g=>[g,c[g]])),f=rn(e,t),_={...ws(s,n),...h,[r]:null,[o]:null};return qe(f,t,[...i,{..._,source:ys(f,t),kind:a}])}function w2(s,e,t,n,a){let i=ws(s,n);if(!("source"in i))return qe(e,t,i);let r=rn(e,t);return qe(r,t,{...i,source:ys(r,t),kind:a})}var Oc=s=>`${JSON.stringify(s,null,2)}
`,y2=s=>({sources:[],...JSON.parse(s)});var ev=/\b([a-z]+(?:_[a-z0-9]+)+)\b(?:, (-?[\d.]+(?:e[+-]?\d+)?))?/g,tv=/the high end, (-?[\d.]+(?:e[+-]?\d+)?)/,v2=(s,e)=>j(Number((s/Ec(e)).toPrecision(12)),6),on=(s,e)=>`${v2(s,e)} ${xr(e)}`.trim(),Tr=s=>`${v2(s.min,s)} to ${on(s.max,s)}`;function ln(s,e){return typeof s.name=="string"?s.name:"joins"in s?`${e(s.id)} to others`:"plug"in s?s.plug&&s.jack?`${e(s.plug)} on ${e(s.jack)}`:"new":Number.isFinite(s.power_w)?`${j(s.power_w,6)} W`:"new"}function $2(s,e,t,n){let a={type:"part",of:"Pack"},i=[];return t.forEach((r,o)=>{if(a.type==="part")a=s[a.of]?.[r]??{type:""},a.type!=="part"&&a.type!=="map"&&i.push(a.label);else if(a.type==="list"){a=a.of;let d=it(e,t.slice(0,o+1));i[i.length-1]+=o===1?` ${d?ln(d,n):""}`.trimEnd():` ${Number(r)+1}`}else a.type==="map"?(i.push(`${a.label} ${r}`),a=a.of):_s[r]&&(i[i.length-1]+=_s[r])}),{label:i.join(", "),brief:i.at(-1)??"",facts:a.type===""?null:a}}var x2=({min:s,max:e},t)=>Number.isFinite(t)&&(t<Number(s)||t>Number(e)),k2=(s,e,t)=>x2(s,e)?`${t} is ${on(e,s)}; allowed: ${Tr(s)}.`:"",Er=s=>s==null;function Tc(s,e,t){return Er(e)?s.required?[{path:t,allowed:Tr(s)}]:[]:x2(s,e)?[{path:t,given:on(e,s),allowed:Tr(s)}]:[]}function Or(s,e,t,n){switch(e.type){case"part":return Er(t)?[]:Object.entries(s[e.of]).filter(([a])=>!ua.has(a)||a==="sources").flatMap(([a,i])=>Or(s,i,t[a],[...n,a]));case"list":{let a=Array.isArray(t)?t:[],i=e.least??0;return[...a.length<i?[{path:n,allowed:`at least ${i}`}]:[],...a.flatMap((o,d)=>Or(s,e.of,o,[...n,d]))]}case"map":return Object.entries(t??{}).flatMap(([a,i])=>Or(s,e.of,i,[...n,a]));case"interval":return Er(t)&&!e.required?[]:Object.keys(_s).flatMap(a=>Tc({...e,required:!0},t?.[a]?.value,[...n,a]));case"number":return Tc(e,t,n);case"quantity":return Tc(e,t?.value,n);case"choice":case"label":return e.required&&Er(t)?[{path:n,allowed:e.choices?"one of the list":"a text"}]:[];case"text":{let a=(t??"").length<(e.shortest??0);return e.required&&a?[{path:n,allowed:e.table?"one of the list":"a text"}]:[]}default:return[]}}var S2=(s,e,t)=>Or(s,{type:"part",of:"Pack"},e,[]).map(({path:n,given:a,allowed:i})=>{let{label:r,brief:o}=$2(s,e,n,t),d=`is ${a??"empty"}; allowed: ${i}.`;return{path:n,words:`${r} ${d}`,brief:`${o} ${d}`,isTold:a!==void 0}});function sv(s){let[,e]=/(?:^|: )([a-z_]+(?:\[\d+\])?(?:[.[][^: ]*)?)$/.exec(s)??[],n=(e??"").split(/[.[\]]+/).filter(Boolean).map(a=>/^\d+$/.test(a)?Number(a):a);return n.at(-1)==="value"?n.slice(0,-1):n}var nv=(s,e)=>e.map((t,n)=>n>0&&e[n-1]==="regions"?String(t):t),av=(s,e,t)=>s[t]?.[e]??Object.values(s).find(n=>e in n)?.[e];function j2(s,e,{message:t,field:n="",value:a,allowed:i=""},r){let o=nv(s,sv(n)),{label:d,brief:c,facts:h}=$2(s,e,o,r);if(!h||!d)return{path:[],words:t};let f=Number(a),_=h.sheet_unit!==void 0&&a!==""&&Number.isFinite(f)&&a!==null,g=an(s).find(({table:E})=>E===o[0])?.part??"Pack",v=String(i).replace(/^a number from .*/,h.min===void 0?"$&":Tr(h)).replace(tv,(E,q)=>`what stands as most, ${on(Number(q),h)}`).replace(ev,(E,q,te)=>{let ye=av(s,q,g);return ye?.label?te===void 0?ye.label:`${ye.label}, ${on(Number(te),ye)}`:E}),S=`is ${_?on(f,h):a}; allowed: ${v}.`;return{path:o,words:`${d} ${S}`,brief:`${c} ${S}`}}var T2=b`
  .controls {
    display: grid; grid-template-columns: repeat(auto-fill, minmax(190px, 1fr)); gap: var(--space-2) var(--space-4);
    align-items: start;
  }
  .controls > .across { grid-column: 1 / -1; min-width: 0; }
  .control { min-width: 0; }
  .control .hint { margin: calc(-1 * var(--space-half)) 0 var(--space-1); }
  .row {
    padding: var(--space-2) 0; border-top: 1px solid var(--line);
    grid-template-columns: repeat(auto-fit, minmax(110px, 1fr));
  }
  .row > .across { grid-column: auto; }
  .row > .remove { margin-top: 1.2rem; }
  .part { padding: var(--space-2) 0 var(--space-1) var(--space-3); border-left: 3px solid var(--line); }
  .tools { display: flex; flex-wrap: wrap; gap: var(--space-2); margin-top: var(--space-1); }
  @media (max-width: 480px) {
    .controls { grid-template-columns: repeat(2, minmax(0, 1fr)); }
    .row > .across { grid-column: 1 / -1; }
  }
`,A2=new Set(["list","map","part"]),iv=100,M2=s=>A2.has(s.type)||s.type==="text"&&!s.table&&s.longest>iv,rt=(s,e,t,n)=>{let a=s.faultAt(e);return l`<div class=${M2(t)?"control across":"control"} data-place=${Ke(e)}>
    ${n}
    ${t.hint&&!A2.has(t.type)?l`<span class="hint">${t.hint}</span>`:p}
    ${a?l`<p class="error">${a}</p>`:p}
  </div>`},Mc=({vocabulary:s},e,t,n,a)=>{let i=s.fieldOf(e).type==="text"?"":null;return l`<div @jw-change=${o=>{o.stopPropagation(),n(Object.values(o.detail.changes)[0])}}>${I(s,e,t??i,a)}</div>`},Ac=(s,e,t,n,a)=>Mc(s,e,n,a,k2(t,n,s.vocabulary.labelOf(e)??""));function E2(s,{label:e,required:t=!1,table:n},a,i,r){let o=Ke(i),d=s.entriesOf(String(n)),c=!a||d.some(h=>h.id===a);return l`<label class="label" for=${o}>${e}</label>
    <select id=${o} @change=${({target:h})=>r(h.value)}>
      <option value="" .selected=${!a} ?disabled=${t}>${t?"choose…":"not given"}</option>
      ${d.map(h=>l`<option value=${h.id} .selected=${h.id===a}>${h.name}</option>`)}
      ${c?p:l`<option value=${a} selected>${a}</option>`}
    </select>`}function rv(s,{label:e,hint:t,of:n,most:a=1/0},i){let r=it(s.document,i),o=Array.isArray(r)?r:[];return l`<div class="table" role="group" aria-label=${e}>
    <h4>${e} <small>${t}</small></h4>
    ${o.map((d,c)=>l`<div class="row controls" role="group" aria-label="${e} ${c+1}">
        ${q2(s,n.of).map(h=>qc(s,n.of,h,[...i,c,h]))}
        <button type="button" class="remove" @click=${()=>s.putField([...i,c],void 0)}>Remove <span
          class="unseen">${e} ${c+1}</span></button>
      </div>`)}
    <div class="tools">
      <button type="button" ?disabled=${o.length>=a} @click=${()=>s.addRow(i,n.of)}>Add a row <span
        class="unseen">to ${e}</span></button>
      ${o.length>1?l`<button type="button" @click=${()=>s.putField(i,[])}>Remove all rows <span class="unseen">of
            ${e}</span></button>`:p}
    </div>
  </div>`}function O2(s,{hint:e,of:t},n,a){let i=(it(s.document,n)??null)!==null;return l`<div class="part" role="group" aria-label=${a}>
    <h4>${a} <small>${e}</small></h4>
    ${i?vs(s,t.of??t,n):p}
    <div class="tools">
      ${i?l`<button type="button" @click=${()=>s.putField(n,void 0)}>Leave out <span
            class="unseen">${a}</span></button>`:l`<button type="button" @click=${()=>s.addPart(n,t.of??t)}>Add <span
            class="unseen">${a}</span></button>`}
    </div>
  </div>`}function qc(s,e,t,n){let a=s.shapes[e][t],i=it(s.document,n),r=c=>s.putField(n,c),o=c=>s.putFigure(n,c===""?null:c),d=`${e}.${t}`;switch(a.type){case"interval":return Object.keys(_s).map(c=>{let h=[...n,c],f=i?.[c]?.value,_=Ac(s,`${d}-${c}`,a,f,g=>s.putFigure(h,g));return rt(s,h,a,_)});case"quantity":return rt(s,n,a,Ac(s,d,a,i?.value,o));case"number":return rt(s,n,a,Ac(s,d,a,i,c=>r(c??void 0)));case"label":return rt(s,n,a,a.table?E2(s,a,i?.value,n,o):Mc(s,d,i?.value,o));case"part":return a.required?Object.keys(s.shapes[a.of]).flatMap(c=>qc(s,a.of,c,[...n,c])):rt(s,n,a,O2(s,a,n,String(a.label)));case"map":return a.keys.map(c=>rt(s,[...n,c],a,O2(s,a,[...n,c],`${a.label} ${c}`)));case"list":return a.of.type==="part"?rt(s,n,a,rv(s,a,n)):rt(s,n,a,a2({label:String(a.label),hint:a.hint,chosen:i??[],put:r,offered:a.table?s.entriesOf(a.table):void 0,longest:a.of.longest}));default:return a.table?rt(s,n,a,E2(s,a,i,n,c=>r(c||void 0))):rt(s,n,a,Mc(s,d,i??a.default,c=>r(c??void 0)))}}var q2=(s,e)=>Object.keys(s.shapes[e]).filter(t=>!ua.has(t));function vs(s,e,t,n){let a=q2(s,e).filter(d=>n===void 0||(s.shapes[e][d].group??"")===n),[i,r]=[!1,!0].map(d=>a.filter(c=>M2(s.shapes[e][c])===d)),o=[...i,...r].map(d=>qc(s,e,d,[...t,d]));return l`<div class="controls">${o}</div>`}var{shapes:re,groups:C2,kinds:Cc,most_bytes:Rc}=H.pack,Ar={interfaces:H.families,cables:H.cables,wire_lines:H.wire_lines,bands:H.bands,modes:H.modes};var ov=[],Nc=an(re),Lc="adapters",zc=class extends w({transport:m(u),document:m(u),families:m(u),_table:x(u),_model:x(u),_name:x(u),_replaces:x(u),_problem:x(u)}){static styles=[y,b`
      :host { padding: var(--space-3) var(--space-3); background: var(--sunk); border-radius: var(--round); }
      div[role='group'] {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(190px, 1fr)); gap: var(--space-2) var(--space-4);
        align-items: end;
      }
      label { display: block; font-size: var(--type-small); font-weight: 600; margin-bottom: var(--space-1); }
    `];constructor(){super(),this._table=Nc[0].table,this._empty()}_empty(){this._model="",this._name="",this._replaces=!1,this._problem=""}get _isCopy(){return this._table in Ar}get _needsModel(){return this._isCopy||this._table===Lc}get _modelLabel(){return this._isCopy?"A copy of":"One end"}render(){return l`<div role="group" aria-label="Add to the pack">
        ${this._choice("what","What to add",Nc.map(({table:e,label:t})=>[e,t]),this._table,e=>{this._empty(),this._table=e})}
        ${this._needsModel?this._models():p} ${this._isCopy?this._naming():p}
        <button type="button" id="add" @click=${this._add}>Add</button>
      </div>
      <p class="error" role="alert">${this._problem}</p>`}_choice(e,t,n,a,i){return l`<div><label for=${e}>${t}</label>
      <select id=${e} @change=${({target:r})=>i(r.value)}>
        ${n.map(([r,o])=>l`<option value=${r} .selected=${r===a}>${o}</option>`)}
      </select></div>`}_models(){let e=this._isCopy?Ar[this._table]:this.families,t=[["","choose…"],...e.map(({id:n,name:a})=>[n,a])];return this._choice("model",this._modelLabel,t,this._model,n=>this._model=n)}_naming(){let e=[["no","beside the built-in one"],["yes","instead of the built-in one"]];return l`<div><label for="new-name">Its name</label>
        <input id="new-name" type="text" autocomplete="off" maxlength="80" .value=${this._name}
          @input=${({target:t})=>this._name=t.value}></div>
      ${this._choice("replaces","It",e,this._replaces?"yes":"no",this._place)}`}_place=e=>{this._replaces=e==="yes"};async _add(){if(this._problem="",this._needsModel&&this._model===""){this._problem=`${this._modelLabel} is empty; allowed: one of the list.`;return}try{let e=await this._newEntry();if((this.document[this._table]??[]).some(({id:n})=>n===e.entry.id)){let n=a=>this.families.find(({id:i})=>i===a)?.name??a;this._problem=`${ln(e.entry,n)} is in the pack already.`;return}$(this,"jw-add",{table:this._table,...e}),this._empty()}catch(e){this._problem=e.message}}async _newEntry(){let{_table:e,_model:t,_name:n,_replaces:a}=this;if(e===Lc)return this._adapters(t);if(!this._isCopy){let{part:d}=Nc.find(c=>c.table===e);return{entry:h2(re,this.document,e,d),replaces:!1}}let i=await this._copied(e,t);if(a)return{entry:{...i,name:n.trim()||i.name},replaces:a};let r=n.trim()||`${i.name}, own`,o=[...Ar[e],...this.document[e]??[]].map(({id:d})=>d);return{entry:{...i,id:ha(r,o),name:r},replaces:a}}async _copied(e,t){let n={interfaces:{entry:t},cables:{cable:t}}[e]??{},a=await this._catalogue(n);return{interfaces:a.entry,cables:a.cable}[e]??a[e].find(i=>i.id===t)}async _adapters(e){let{adapters:t}=await this._catalogue({}),n=t.find(({id:i})=>i===e);if(n)return{entry:n,replaces:!0};let a={source:pa(Lc,e),kind:"datasheet"};return{entry:{...ws(re,"Adapter"),id:e,...a},replaces:!1}}_catalogue(e){return this.transport.ask("catalogue",e,{packs:ov})}};customElements.define("jw-pack-add",zc);var lv="jw-number-field, jw-list-field, jw-text-field, jw-choice-field, jw-switch-field, select, input, button";function R2(s){if(!s)return;for(let n=s.closest("details");n;n=n.parentElement?.closest("details")??null)n.open=!0;let e=s.querySelector(lv),t=e?.shadowRoot?.querySelector('input[type="text"], input, select')??e;s.scrollIntoView({block:"center"}),t?.focus({preventScroll:!0})}var dv=an(re),cv={interfaces:"families",cables:"cables",wire_lines:"wire_lines",bands:"bands",modes:"modes"},Wc=(s,e)=>Object.fromEntries(Object.entries(re[s]).filter(([t])=>e(t))),uv={...re,Pack:Wc("Pack",s=>["name","version","note"].includes(s))},hv={...re,PackSource:Wc("PackSource",s=>s==="title")},pv={...re,PackSource:Wc("PackSource",s=>s!=="title")},Pc=6,Ic=class extends w({transport:m(u),taken:m(u),_history:x(u),_faults:x(u),_said:x(u),_kinds:x(u)}){static styles=[y,ne,T,n2,T2,b`
      label { display: block; font-size: var(--type-small); font-weight: 600; margin-bottom: var(--space-1); }
      h3 { margin: var(--space-4) 0 var(--space-2); }
      h4 { margin: var(--space-1) 0; font-size: var(--type-small); }
      h4 small { font-weight: 400; color: var(--soft); }
      .bar { display: flex; flex-wrap: wrap; gap: var(--space-2); margin-top: var(--space-4); }
      .entry {
        padding: var(--space-1) var(--space-3) var(--space-3); margin-top: var(--space-2);
        border: 1px solid var(--line); border-radius: var(--round);
      }
      .entry:not([open]) { padding-bottom: var(--space-1); }
      .entry > summary { overflow-wrap: anywhere; }
      .entry > summary small { padding-left: var(--space-2); }
      .entry > .quiet { margin: var(--space-half) 0 var(--space-2); }
      .faults { padding-left: 0; list-style: none; }
      .faults button {
        min-height: 32px; padding: var(--space-half) var(--space-2); text-align: left; color: var(--alarm);
        border-color: var(--alarm);
        font-size: var(--type-small);
      }
      .faults { display: grid; gap: var(--space-1); }
    `];constructor(){super(),this._vocabulary=new Ce(this,{context:jn,subscribe:!0}),this.taken=[],this._history=e2(Sr),this._begin(Sr)}_begin(e){this._history=jc(this._history,e),this._faults=[],this._said="",this._kinds={}}async open(e){this._begin(y2(e)),await this.updateComplete;let t=this.renderRoot.querySelector("details");t.open=!0,t.querySelector("summary")?.focus(),t.scrollIntoView({block:"start"})}refuse(e){this._faults=[j2(re,this._document,e,this._nameOf)]}accept(){this._said=`${this._document.name} is in use.`}get _document(){return this._history.present}get _lists(){return this._vocabulary.value.lists}get _desk(){return{shapes:re,document:this._document,vocabulary:this._vocabulary.value,entriesOf:e=>this._entriesOf(e),faultAt:e=>this._faults.find(t=>!t.isTold&&Ke(t.path)===Ke(e))?.brief??"",putFigure:(e,t)=>this._change(e,g2(this._document,e,t,this._kindOf(e))),putField:(e,t)=>this._change(e,b2(this._document,e,t,this._kindOf(e))),addRow:(e,t)=>this._change(e,_2(re,this._document,e,t,this._kindOf(e))),addPart:(e,t)=>this._change(e,w2(re,this._document,e,t,this._kindOf(e)))}}_entriesOf(e){let t=(this._document[e]??[]).map(({id:a,name:i})=>({id:a,name:i||a})),n=new Set(t.map(({id:a})=>a));return[...(this._lists[cv[e]]??[]).filter(({id:a})=>!n.has(a)),...t]}_nameOf=e=>this._entriesOf("interfaces").find(({id:t})=>t===e)?.name??e;_kindOf([e,t]){let n=this._document[e]?.[t];return n?.id===void 0?Cc[0]:this._kinds[`${e}/${n.id}`]??m2(this._document,[e,t])}_change(e,t){this._faults=this._faults.filter(n=>!Ke(n.path).startsWith(Ke(e))),this._said="",this._history=jc(this._history,t)}render(){let{past:e,future:t}=this._history,n=this._desk,{name:a="",default_powers_w:i=[]}=n.document;return l`<details class="panel">
      <summary>Make a pack <small>connectors, cables, adapters, bands, modes and limits of your own</small></summary>
      <div class="bar">
        <button type="button" id="undo" ?disabled=${e.length===0} @click=${()=>this._step(t2)}>Undo</button>
        <button type="button" id="redo" ?disabled=${t.length===0}
          @click=${()=>this._step(s2)}>Redo</button>
        <button type="button" @click=${this._restart}>Start again</button>
      </div>
      <form novalidate @submit=${this._made}>
        <h3>The pack${a?l` “${a}”`:p}</h3>
        ${vs({...n,shapes:uv},"Pack",[])}
        <div @jw-change=${r=>this._powers(r)}>
          <jw-list-field name="Pack.default_powers_w" zero="receive" .value=${i}></jw-list-field>
        </div>
        ${dv.map(({table:r,part:o,label:d})=>Z1(n.document[r]??[],({id:c})=>`${r}/${c}`,(c,h)=>this._entry(n,{table:r,part:o,label:d},c,h)))}
        <h3>Add to it</h3>
        <jw-pack-add .transport=${this.transport} .document=${n.document}
          .families=${this._entriesOf("interfaces")} @jw-add=${this._add}></jw-pack-add>
        <div role="alert">
          ${this._faultsTold()}
        </div>
        <p class="quiet" role="status">${this._said}</p>
        <div class="bar">
          <button id="take">Use this pack</button>
          <button type="button" id="save-draft" @click=${this._save}>Save as file</button>
        </div>
      </form>
    </details>`}_entry(e,{table:t,part:n,label:a},i,r){let o=[t,r],d=ys(e.document,o),c=e.document.sources.findIndex(({id:v})=>v===d),h=v=>Object.values(re[n]).some(k=>k.group===v),f=ln(i,this._nameOf),_=e.document.overrides?.[t]?.includes(i.id),g=`${a.toLowerCase()}${_?", in place of the built-in one":""}`;return l`<details class="entry" open role="group" aria-label="${a} ${f}"
      data-entry="${t}/${i.id}">
      <summary>${f} <small>${g}</small></summary>
      ${vs(e,n,o,"")}
      ${c===-1?p:vs({...e,shapes:hv},"PackSource",["sources",c])}
      <p class="quiet">A figure that you change has this source; the others keep theirs.</p>
      ${C2.filter(h).map(v=>l`<details class="group"><summary>${v}</summary>${vs(e,n,o,v)}</details>`)}
      <details class="group">
        <summary>More on the source <small>${this._kindOf(o)}</small></summary>
        <div class="controls">
          <div class="control">
            <label for="kind-${Ke(o)}">Your figures are</label>
            <select id="kind-${Ke(o)}" @change=${({target:v})=>this._setKind(o,v.value)}>
              ${Cc.map(v=>l`<option .selected=${v===this._kindOf(o)}>${v}</option>`)}
            </select>
          </div>
        </div>
        ${c===-1?p:vs({...e,shapes:pv},"PackSource",["sources",c])}
      </details>
      <div class="tools">
        <button type="button" @click=${()=>this._drop(t,r,f)}>Remove <span
          class="unseen">${f}</span> from the pack</button>
      </div>
    </details>`}async _add({detail:{table:e,entry:t,replaces:n}}){let a=(this._document[e]??[]).length,i=[e,a];this._change(i,rn(c2(this._document,e,t,n),i)),this._said=`${ln(t,this._nameOf)} is in the pack.`;for(let r of this.renderRoot.querySelectorAll("details.entry"))r.removeAttribute("open");await this.updateComplete,this._show(i)}_drop(e,t,n){this._change([e],u2(this._document,e,t)),this._said=`${n} is removed; Undo brings it back.`}_setKind(e,t){let[n,a]=e;this._kinds={...this._kinds,[`${n}/${this._document[n][a].id}`]:t},this._change([],f2(this._document,e,t))}_powers(e){e.stopPropagation(),this._change(["default_powers_w"],qe(this._document,["default_powers_w"],e.detail.changes["Pack.default_powers_w"]))}_step(e){this._history=e(this._history),this._faults=[],this._said=""}_restart(){this._begin(Sr)}_faultsTold(){let{_faults:e}=this;return e.length===0?p:l`<ul class="faults">${e.slice(0,Pc).map(({path:t,words:n})=>l`<li>${t.length>0?l`<button type="button" @click=${()=>this._show(t)}>${n}</button>`:l`<p class="error">${n}</p>`}</li>`)}
    ${e.length>Pc?l`<li class="error">and ${e.length-Pc} more.</li>`:p}</ul>`}_show(e){let[t,n]=e,{id:a}=this._document[t]?.[n]??{},{renderRoot:i}=this,r=i.querySelector(`[data-place="${Ke(e)}"]`);R2(r??i.querySelector(`[data-entry="${t}/${a}"]`))}_isWhole(){let t=[...this.renderRoot.querySelectorAll("jw-number-field, jw-list-field")].map(a=>a).filter(({problem:a,error:i})=>a&&!i),n=a=>(a.closest("[data-place]")?.dataset.place??"").split("-").filter(Boolean);return this._faults=[...t.map(a=>({path:n(a),words:a.problem,isTold:!0})),...S2(re,this._document,this._nameOf)],this._faults.length===0}_named(){let e=this._document;return e.id===""&&this._change([],{...e,id:ha(e.name,this.taken)}),this._document}_made(e){if(e.preventDefault(),!this._isWhole())return;let t=this._named();$(this,"jw-pack-made",{text:Oc(t),label:t.name})}_save(){if(!this._isWhole())return;let e=this._named();K(`${e.id}.json`,"application/json",Oc(e))}};customElements.define("jw-pack-form",Ic);var mv={interfaces:"connector",cables:"cable",wire_lines:"two-wire line",adapters:"adapter",matings:"mating",bands:"band",modes:"mode",house_limits:"house limit",default_powers_w:"default powers"},fv=s=>s.replaceAll("_"," ").replaceAll("."," ");function Bc(s){let e=new Map;for(let t of s){let[,n,a="",i=""]=/^([^/]+)(?:\/([^.]+)(?:\.(.+))?)?$/.exec(t)??[],r=`${mv[n]} ${a}`.trim();e.set(r,[...e.get(r)??[],...i?[fv(i)]:[]])}return[...e].map(([t,n])=>n.length>0?`${t} (${n.join(", ")})`:t).join("; ")}var Hc="packs",ma=class extends w({transport:m(u),stage:{type:String},shelf:m(u),version:{type:Number},_over:x(u),_refused:x(u),_said:x(u),_busy:x(u)},me){static view=Hc;static styles=[y,Qe,T,ae,b`
      main { max-width: 1100px; margin: 0 auto; grid-template-columns: minmax(0, 1fr) !important; }
      .drop {
        margin-top: var(--space-2); display: grid; gap: var(--space-2); padding: var(--space-4);
        border: 2px dashed var(--edge);
        border-radius: var(--round); background: var(--card);
      }
      .drop[data-over] { border-color: var(--focus); background: var(--sunk); }
      input[type='file'] { padding: var(--space-2); width: 100%; }
      ::file-selector-button {
        font: inherit; padding: var(--space-1) var(--space-3); color: var(--ink); background: var(--sunk);
        border: 1px solid var(--edge);
        border-radius: 6px;
      }
      ul { list-style: none; padding: 0; display: grid; gap: var(--space-3); }
      li {
        padding: var(--space-3) var(--space-4); background: var(--card); border: 1px solid var(--line);
        border-radius: var(--round);
      }
      li[data-off] { border-style: dashed; }
      li header { display: flex; flex-wrap: wrap; gap: var(--space-1) var(--space-3); align-items: center; }
      li h3 { flex: 1 1 12rem; overflow-wrap: anywhere; }
      p { overflow-wrap: anywhere; }
      #said { min-height: 1.4em; }
      .trouble b { overflow-wrap: anywhere; }
      @media print { .drop, jw-pack-form, li header button { display: none; } }
    `];constructor(){super(),this.stage="",this._said="",this._busy=!1,this._catalogue=new pe(this,(e,t)=>this.transport.ask("catalogue",e,t))}updated(e){this.transport===void 0||this.shelf===void 0||(e.has("version")||e.has("transport"))&&this._catalogue.ask({})}render(){let{_refused:e}=this,t=this._busy?"pending":this._catalogue.status;return l`<jw-progress status=${t} stage=${this.stage===St?"":this.stage}></jw-progress>
      <main>
        <section class="panel">
          <h2>Packs</h2>
          <p>A pack holds entries of your own: connectors, cables, adapters, bands, modes, default powers, and the
            limits your station sets itself. It stays in this browser. What comes from one is marked “from pack”
            wherever it shows; no formula is ever changed.</p>
          <div class="drop" ?data-over=${this._over} @dragover=${this._dragged} @dragleave=${()=>this._over=!1}
            @drop=${this._dropped}>
            <label for="file">Drop a pack file here, or choose one</label>
            <input id="file" type="file" accept=".json,application/json" @change=${this._picked}>
          </div>
          ${e?l`<p class="trouble" role="alert" id="refused">Nothing was changed. <b>${e}</b></p>`:p}
          <p class="quiet" role="status" id="said">${this._said}</p>
        </section>
        <section class="panel"><h2>On this page</h2>${this._list()}</section>
        <jw-pack-form .transport=${this.transport} .taken=${[...this.shelf?.server??[],...this.shelf?.own??[]].map(({id:n})=>n)} @jw-pack-made=${this._made}></jw-pack-form>
      </main>`}_list(){let{server:e=[],own:t=[]}=this.shelf??{};return e.length+t.length===0?l`<p class="quiet">None: everything shown is built in.</p>`:l`<ul>${e.map(n=>this._pack(n,!0))}${t.map(n=>this._pack(n,!1))}</ul>`}_pack(e,t){let n=t||e.on,a=this._catalogue.result?.packs.find(({id:i})=>i===e.id);return l`<li data-pack=${e.id} ?data-off=${!n}>
      <header>
        <h3>${e.name}</h3>
        ${t?l`<span class="quiet">of the server</span>`:l`<button class="turn" aria-pressed=${n} @click=${()=>this._turn(e)}>In use</button>
              <button class="change" aria-label="Change ${e.name} in the form"
                @click=${()=>this._open(e,a)}>Change</button>`}
        <button class="save" aria-label="Save ${e.name} as a file"
          @click=${()=>K(`${e.id}.json`,"application/json",e.text)}>Save as file</button>
        ${t?p:l`<button class="remove" aria-label="Remove ${e.name}"
              @click=${()=>this._remove(e)}>Remove</button>`}
      </header>
      ${e.refused?l`<p class="error">Turned off: ${e.refused}</p>`:p}
      ${n&&a?this._told(a):p}
    </li>`}_told({version:e,note:t,added:n,changed:a,taken:i}){return l`<p class="quiet">Version ${e}${t?l`. ${t}`:p}</p>
      ${n.length>0?l`<p>Adds ${Bc(n)}.</p>`:p}
      ${a.length>0?l`<p>Changes ${Bc(a)}.</p>`:p}
      ${i.map(r=>l`<p class="taken">${r}</p>`)}`}_dragged(e){e.preventDefault(),this._over=!0}_dropped(e){e.preventDefault(),this._over=!1,this._read(e.dataTransfer.files[0])}async _picked({target:e}){await this._read(e.files[0]),e.value=""}async _read(e){if(e){if(e.size>Rc){this._refuse(`${e.name} is ${e.size} bytes long; allowed: up to ${Rc}.`);return}await this._take(await e.text(),e.name)}}async _tried(e,t){this._refused=void 0,this._busy=!0,this._said="Checking the pack…";try{await this.transport.ask("catalogue",{},{packs:this.shelf.with(e,t)}),this._change(()=>this.shelf.put(e)),this._said=`${t} is in use.`;return}catch(n){return n}finally{this._busy=!1}}async _take(e,t){let n=await this._tried(e,t);n&&this._refuse(n.message)}async _made({detail:{text:e,label:t}}){let n=await this._tried(e,t);if(!n)return this._form.accept();this._said="",this._form.refuse(n)}get _form(){return this.renderRoot.querySelector("jw-pack-form")}_open(e,t){return this._form.open(t?.today||e.text)}_change(e){let t=this.shelf.own;e(),this.stationStore.change(Hc,{},{before:t,after:this.shelf.own})}turn(e){let t=this.stationStore.turn(e,Hc);return t?.own&&this.shelf.bringBack(t.own.from,t.own.to),t&&(this._said=e==="undo"?"Undone.":"Done again."),this._refused=void 0,t!==void 0}_refuse(e){this._refused=e,this._said=""}_turn(e){if(!e.on)return this._take(e.text,e.name);this._refused=void 0,this._change(()=>this.shelf.turn(e,!1)),this._said=`${e.name} is off.`}_remove(e){this._refused=void 0,this._change(()=>this.shelf.remove(e)),this._said=`${e.name} is removed.`}};customElements.define("jw-packs-view",ma);var N2={id:ma.view,label:"Packs",description:"Connectors, cables and limits of your own.",fields:()=>o2(re),words:()=>l2(re),element:({transport:s,stage:e,shelf:t,version:n})=>l`<jw-packs-view class="view" .transport=${s} .stage=${e} .shelf=${t}
      .version=${n}></jw-packs-view>`};var gv=["short","open","matched","antenna"],L2=({requests:{span:s,sweep:e}})=>({sweep:{length_tolerance:e.length_tolerance,window_shape:e.window_shape,length_m:s.length_m,velocity_factor:s.velocity_factor,lowest_hz:s.lowest_hz,highest_hz:s.highest_hz,most_points:s.most_points,of:{type:"text",longest:20,default:"line",nullable:!1},end:{type:"choice",choices:gv,default:"short",nullable:!1},way:{type:"choice",choices:["judge","hunt"],default:"judge",nullable:!1}}});var bv={sound:{mark:"✓",words:"Nothing found"},suspect:{mark:"!",words:"Bad joint"},damage:{mark:"!",words:"Damaged cable"},unclear:{mark:"?",words:"One of several places"},end:{mark:"?",words:"Antenna, or the joint at it"},"cannot tell":{mark:"?",words:"Can’t tell"},"no fit":{mark:"≠",words:"Another line"},passed:{mark:"✓",words:"Passed"},failed:{mark:"!",words:"Failed"}},_v={mark:"∿",words:"Echoes by distance"},z2=({line:s,part:e})=>bv[(s??e)?.finding??""]??_v,P2={bad:"!",possible:"?",behind:"…",hidden:"–",sound:"✓"},I2=({joints:s,cables:e})=>[...s.map(t=>({...t,place:`at ${F(t.distance_m)}`})),...e.map(t=>({...t,place:`${Mt(t.from_m,"m",3)} to ${F(t.to_m)}`}))].sort((t,n)=>t.element-n.element),Pt=(s,{faults:e,apart:t})=>t.includes(s)||e.some(n=>n.element===s);function dn({field:s,message:e,value:t,allowed:n},a){if(s!=="touchstone"&&s!=="earlier")return e;let[,i,r]=/^on line (\d+), (.*)$/s.exec(n)??[];return i?`${a} can’t be read: line ${i} is ${t}. What can stand there: ${r}.`:`${a} can’t be used: found ${String(t).replaceAll('"',"")}, needed ${n}.`}var F=s=>Te(s,3),W2=({name:s,unit:e,value:t,low:n,high:a})=>`${s} ${se(t,e,3)} (${se(n,e,3)} to ${se(a,e,3)})`,ke=s=>s===null?"–":j(s,2),B2=({least_resistance_ohm:s,least_capacitance_f:e})=>`${s===null?"–":B(s,"Ω",2)}, ${e===null?"–":B(e,"F",2)}`,It=s=>`${j(s*100,2)} %`;function H2({evidence:s}){let e=s/Math.LN10;return e<3?`${j(Math.exp(s),2)} to 1`:`10^${Math.floor(e)} to 1`}var Uc=s=>Math.max(0,...s.filter(e=>e!==null));function Fc(s,e,t){let n=s.distance_m.flatMap((r,o)=>Math.abs(r-e)<=t/2?[o]:[]);n.length===0&&n.push(xv(s.distance_m,e));let a=Mr(s),i=r=>Uc(n.map(o=>vv(r[o]??null)));return{measured:i(s.measured),earlier:i(s.earlier),excess:Uc(n.map(r=>$v(s,r))),change:Uc(n.map(r=>a[r])),threshold:i(s.threshold)}}function U2(s,e){let{profile:t,range_m:n,resolution_m:a}=s,i=t.distance_m[t.distance_m.length-1];if(e>n)return{echo:`This sweep sees no farther than ${F(n)}: take more points, or less span.`,part:""};if(e>i)return{echo:`That is beyond the end of the chart, ${F(i)}.`,part:""};let{measured:r,excess:o,threshold:d}=Fc(t,e,a),c=o>d,h=`${ke(r)} of the wave comes back from there`;return{echo:c?`${h}, ${"joints"in s?"more than a good line shows":"more than noise makes"}.`:`${h}: nothing that stands out.`,part:"joints"in s?wv(s,e):yv(s,e)}}function wv({joints:s,cables:e,resolution_m:t},n){let a=s.find(c=>Math.abs(c.distance_m-n)<=t/2);if(a)return`That is ${a.name}, at ${F(a.distance_m)}: ${a.words}.`;let i=e.find(({from_m:c,to_m:h})=>c<=n&&n<=h);if(!i)return"That is beyond the end of the line.";let r=s.filter(c=>c.distance_m<=n).at(-1),o=s.find(c=>c.distance_m>n),d=[r&&`${F(n-r.distance_m)} after ${r.name}`,o&&`${F(o.distance_m-n)} before ${o.name}`].filter(Boolean);return`That is in ${i.name}, ${d.join(" and ")}: ${i.words}.`}function yv({echoes:s,resolution_m:e},t){if(s.length===0)return"No echo stands out in this sweep.";let[n]=s.toSorted((r,o)=>Math.abs(r.distance_m-t)-Math.abs(o.distance_m-t)),a=Math.abs(n.distance_m-t),i=`at ${F(n.distance_m)} (${F(n.low_m)} to ${F(n.high_m)})`;return a<=e?`The echo ${i}: ${n.words}`:`The nearest echo is ${i}, ${F(a)} away: ${n.words}`}var Mr=({measured:s,earlier:e})=>s.map((t,n)=>Math.abs((t??0)-(e[n]??t??0))),vv=s=>s===null?null:Math.abs(s),$v=({measured:s,expected:e},t)=>s[t]===null?null:Math.abs(s[t]-(e[t]??0)),xv=(s,e)=>s.reduce((t,n,a)=>Math.abs(n-e)<Math.abs(s[t]-e)?a:t,0);function $s({line:s,echoes:e}){if(e)return e.echoes.slice(0,-1).map(({distance_m:a})=>({element:null,name:F(a),distance_m:a}));if(!s)return[];let t=s.faults.map(({element:a,part:i,distance_m:r})=>({element:a,name:i,distance_m:r}));if(t.length>0)return t;let n=[...s.joints.map(({element:a,name:i,distance_m:r})=>({element:a,name:i,distance_m:r})),...s.cables.map(({element:a,name:i,from_m:r,to_m:o})=>({element:a,name:i,distance_m:(r+o)/2}))];return s.apart.flatMap(a=>n.find(i=>i.element===a)??[])}function F2(s,e){if(e.part)return e.part.trend?[e.part.trend.sentence]:["The second file is not of the same kind."];let t=e.line??e.echoes;if(!t)return[];let n=$s(s);return n.length===0?[jv(t)]:[...n.map(a=>kv(a,t,e)),...Sv(n,e)]}function kv(s,e,t){let{earlier:n,measured:a,change:i}=Fc(e.profile,s.distance_m,e.resolution_m),r=i>D2(e.profile),o=`the echo there went from ${ke(n)} to ${ke(a)}`,d=`${o}, no more than two sweeps of one line differ by`;return t.line&&["no fit","cannot tell"].includes(t.line.finding)?`${s.name}: ${o}, but the second sweep can’t be judged.`:t.line&&$s(t).some(({element:c})=>c===s.element)?r?`${s.name} changed and still stands out: ${o}.`:`${s.name} is as it was: ${d}.`:t.line?`${s.name} no longer stands out: ${r?o:d}.`:r?`${s.name} got ${a>n?"worse":"better"}: ${o}.`:`${s.name} is as it was: ${d}.`}function Sv(s,e){if(!e.line)return[];let t=$s(e).filter(({element:n})=>s.every(a=>a.element!==n));return t.length>0?[`What stands out now: ${t.map(({name:n,distance_m:a})=>`${n} at ${F(a)}`).join(", ")}.`]:e.line.finding==="sound"?["Nothing else is found."]:[]}function jv({profile:s}){let e=Mr(s),t=e.indexOf(Math.max(...e)),n=`at ${F(Math.max(s.distance_m[t],0))}`;return e[t]>D2(s)?`The two sweeps differ most ${n}, by ${ke(e[t])} of the wave.`:"Nothing changed beyond what two sweeps of one line differ by."}var Ev=5,D2=s=>Ev*Ov(Mr(s)),Ov=s=>s.toSorted((e,t)=>e-t)[Math.floor(s.length/2)]??0;var Wt=[["line","Choose the line"],["safe","Make it safe"],["span","Set the analyser"],["calibrate","Calibrate"],["end","Short or open the far end"],["sweep","Sweep, and give the file"],["place","Go to the place"],["again","Sweep again"],["compare","Before and after"]],G2={at:Wt[0][0]},K2=s=>Wt[Wt.findIndex(([e])=>e===s)+1]?.[0],V2=s=>["sweep","place","again","compare"].includes(s),Dc={of:20,name:200,text:8e6};function Y2(s){let{of:e,at:t,file:n}=U("hunt",s);return Wt.every(([a])=>a!==t)&&P("hunt.at",t,`one of ${Wt.map(([a])=>a).join(", ")}`),Q("hunt.of",e,Dc.of),n!==null&&(Q("hunt.file.name",U("hunt.file",n).name,Dc.name),Q("hunt.file.text",n.text,Dc.text)),{of:e,at:t==="compare"?"again":t,file:n&&{name:n.name,text:n.text}}}var J2=["Transmitter off and locked out: unplug it from the line, and from the mains or take the key along, so that nobody can key it while you are at the line.","Short the line for a moment, inner to outer conductor, before the analyser touches it: it may hold static charge.","A thunderstorm near? Stop here."],Kc="Before your hands touch the line: transmitter off and locked out. Nobody keys while you are there. On a mast: harness, a second person, and no power line within reach.",X2={short:"A short sends current through every joint, so a contact that has gone bad shows: the best end for most hunts.",open:"At an open end no current flows: the last joint hides a bad contact. Good against water and crushed cable.",matched:"A matched load keeps the end’s own echo small, so small echoes along the line show; it must be a good one.",antenna:"An antenna hides what is near it, and lets the least be told. Take it off if you can get at it."};function Q2(s){let{line:e,part:t,echoes:n}=s;if(t){let d=t.finding==="failed"?"It is the part in your hand.":"The part in your hand keeps its limits.";return{places:[],work:t.finding==="failed"?Gc:[],why:d}}let a=$s(s);if(n){let d=a.map(({name:h})=>`${h} from the analyser`),c=d.length>0?"An echo is no fault yet: a good joint sends one back too. Begin with the strongest, and leave the last, which is the end of the line.":"No echo stands out but the end of the line.";return{places:d,work:d.length>0?Gc:[],why:c}}let i=e?.faults??[],r=i.length>0?i.map(d=>`${d.part}, ${Tv(d)} from the analyser`):a.map(({name:d,distance_m:c})=>`${d}, ${F(c)} from the analyser`),o=i.length>0&&i.every(({where:d})=>d==="cable");return{places:r,work:r.length===0?[]:o?Mv:Gc,why:Av[e?.finding??""]}}var Tv=({distance_m:s,low_m:e,high_m:t})=>t>e?`${F(e)} to ${F(t)}`:F(s),Av={suspect:"The sweep names this place.",damage:"The sweep puts it inside the cable.",unclear:"It is one of these; begin with the one you reach most easily.",end:"The line is good up to here. What is bad is the antenna, or the joint at it.",sound:"The sweep finds nothing to go to.","cannot tell":"The sweep names no place yet. Do what the answer says, and sweep again.","no fit":"The sweep is of another line than described. Mend the description, or find out what ends the line."},Gc=["Wiggle it while somebody watches the analyser sweep: if the trace jumps, it is this one.","Open it. Look for water, green copper, a pin that stands back, cut braid, a collar that was never tight.","Clean, remake or exchange it, and seal it."],Mv=["Follow the cable over that stretch, with a tape from the analyser on: crushed, bent tight, chafed, wet, nailed?","Bend it gently while somebody watches the analyser sweep: if the trace jumps, it is here.","Cut it out, or exchange the cable."];var qr=s=>s.map(e=>e/1e6),Cr=340,ot=s=>ge("m").shown(s),Vc=()=>`from the analyser, ${Ln("m")}`,le=(s,e,t,n,a={})=>({type:"scatter",mode:"lines",x:s,y:e,name:t,line:n,connectgaps:!1,hovertemplate:`%{y:.3f} at %{x:.4g}<extra>${t}</extra>`,...a}),Bt=s=>({...s,showlegend:!0,legend:{orientation:"h",y:1.02,yanchor:"bottom",x:0},margin:{...s.margin,t:34}});function eg(s,e=ee){let{profile:t,joints:n,cables:a}=s,i=t.distance_m.map(ot),r=Bt(xe({x:Vc(),y:"reflection",colours:e,height:Cr}));return{data:[...ag(t,t.expected,e),le(i,t.expected,"expected",{color:e.soft,width:1.5,dash:"dot"}),...ig(t,e),le(i,t.measured,"measured",{color:e.band,width:2.5})],layout:{...r,yaxis:{...r.yaxis,range:Nv(s),tickformat:s.transform==="low-pass"?"+.3~f":".3~f"},shapes:[...a.filter(o=>Pt(o.element,s)).map(o=>Lv(o,e)),...n.map(o=>zv(o,s,e))],annotations:n.map(o=>Pv(o,s,e))},config:we}}function tg({profile:s,echoes:e,transform:t},n=ee){let a=s.distance_m.map(ot),i=Bt(xe({x:Vc(),y:"reflection",colours:n,height:Cr}));return{data:[...ag(s,a.map(()=>0),n),...ig(s,n),le(a,s.measured,"measured",{color:n.band,width:2.5})],layout:{...i,yaxis:{...i.yaxis,tickformat:t==="low-pass"?"+.3~f":".3~f"},shapes:e.map(({distance_m:r})=>Yc(r,{color:n.soft,width:1,dash:"dot"})),annotations:e.map(({distance_m:r})=>Jc(r,F(r),n.ink))},config:we}}function sg({profile:s,places:e},t=ee){let n=s.distance_m.map(ot),a=Bt(xe({x:Vc(),y:"reflection",colours:t,height:Cr})),i=Math.max(Cv(s),...e.map(r=>1.3*Rv(s,r)));return{data:[le(n,s.earlier,"before",{color:t.soft,width:2,dash:"dash"}),le(n,s.measured,"after",{color:t.band,width:2.5})],layout:{...a,yaxis:{...a.yaxis,range:[ng(s)?-i:0,i],tickformat:".3~f"},shapes:e.map(({distance_m:r})=>Yc(r,{color:t.ink,width:2})),annotations:e.map(({name:r,distance_m:o})=>Jc(o,r,t.ink))},config:we}}var qv=.04,Z2=6;function Cv({measured:s,earlier:e}){let t=[...s,...e].map(n=>Math.abs(n??0)).toSorted((n,a)=>n-a);return 1.6*Math.max(.01,t[Math.floor(t.length*(1-qv))]??0)}function Rv({distance_m:s,measured:e,earlier:t},{distance_m:n}){let a=s.findIndex(r=>r>=n);if(a<0)return 0;let i=[e,t].flatMap(r=>r.slice(Math.max(a-Z2,0),a+Z2));return Math.max(...i.map(r=>Math.abs(r??0)))}var ng=({measured:s})=>s.some(e=>e<0);function ag({distance_m:s,threshold:e},t,n){let a=s.map(ot),i=r=>t.map((o,d)=>o===null?null:o+r*e[d]);return[le(a,i(-1),"below",{width:0},{showlegend:!1,hoverinfo:"skip"}),le(a,i(1),"threshold",{width:0},{fill:"tonexty",fillcolor:Zs(n.band),hoverinfo:"skip"})]}var ig=({distance_m:s,earlier:e},t)=>e.length>0?[le(s.map(ot),e,"earlier",{color:t.soft,width:1.5,dash:"dash"})]:[];function Nv({profile:s,joints:e}){let t=Math.max(.02,...e.flatMap((n,a)=>a===e.length-1?[n.excess,n.threshold]:[n.measured,n.expected,n.threshold]));return[ng(s)?-1.6*t:0,1.6*t]}var Yc=(s,e)=>({type:"line",layer:"below",yref:"paper",x0:ot(s),x1:ot(s),y0:0,y1:1,line:e}),Jc=(s,e,t)=>({x:ot(s),yref:"paper",y:1,yanchor:"top",xanchor:"left",showarrow:!1,textangle:90,text:e,font:{size:12,color:t}}),Lv=({from_m:s,to_m:e},t)=>({type:"rect",yref:"paper",x0:ot(s),x1:ot(e),y0:0,y1:1,line:{width:0},fillcolor:t.ink,opacity:.12}),zv=(s,e,t)=>Yc(s.distance_m,Pt(s.element,e)?{color:t.ink,width:2.5}:{color:t.soft,width:1,dash:"dot"}),Pv=(s,e,t)=>Jc(s.distance_m,`${Pt(s.element,e)?"! ":""}${s.element+1} · ${s.name}`,Pt(s.element,e)?t.ink:t.soft);function rg({curves:s},e=ee){let t=qr(s.frequency_hz),n=i=>i.map(r=>r===null?null:-r),a=Bt(xe({x:"frequency, MHz",y:"return loss, dB",colours:e}));return{data:[le(t,n(s.expected_db),"expected",{color:e.soft,width:1.5,dash:"dot"}),le(t,n(s.measured_db),"measured",{color:e.band,width:1.5}),le(t,n(s.fitted_db),"as fitted",{color:e.other,width:1.5,dash:"dash"})],layout:{...a,yaxis:{...a.yaxis,autorange:"reversed"}},config:we}}function Iv(s,e){if(s===null||e===null)return[null,null];let t=(1-s)**2+e**2;return[(1-s**2-e**2)/t,2*e/t]}function og(s,e,t=ee){let n=qr(e).map(a=>`${a.toPrecision(4)} MHz`);return{data:s.map(({name:a,real:i,imaginary:r,colour:o,dash:d})=>{let c=i.map((h,f)=>Iv(h,r[f]));return{type:"scattersmith",mode:"lines",name:a,real:c.map(([h])=>h),imag:c.map(([,h])=>h),line:{color:t[o],width:1.5,dash:d},text:n,hovertemplate:`%{text}: %{real:.3g} %{imag:+.3g}j<extra>${a}</extra>`}}),layout:{...Bt(xe({x:"",y:"",colours:t,height:Cr})),margin:{l:24,r:24,t:34,b:20},smith:{bgcolor:"rgba(0,0,0,0)",realaxis:{gridcolor:t.line,linecolor:t.soft,tickfont:{size:12},tickvals:[.2,.5,1,2,5]},imaginaryaxis:{gridcolor:t.line,linecolor:t.soft,tickfont:{size:12},tickvals:[-5,-2,-1,-.5,-.2,0,.2,.5,1,2,5]}}},config:we}}var lg=({curves:s},e=ee)=>og([{name:"measured",real:s.measured_real,imaginary:s.measured_imaginary,colour:"band",dash:"solid"},{name:"as fitted",real:s.fitted_real,imaginary:s.fitted_imaginary,colour:"other",dash:"dash"}],s.frequency_hz,e),dg=(s,e=ee)=>og([{name:"into port 1",real:s.measured_real,imaginary:s.measured_imaginary,colour:"band",dash:"solid"}],s.frequency_hz,e);function cg(s,e=ee){let t=qr(s.frequency_hz),n=Bt(xe({x:"frequency, MHz",y:"loss, dB",colours:e}));return{data:[le(t,s.expected_loss_db,"expected",{color:e.soft,width:1.5,dash:"dot"}),le(t,s.limit_loss_db,"limit",{color:e.ink,width:1.5}),...s.earlier_loss_db.length>0?[le(t,s.earlier_loss_db,"earlier",{color:e.soft,width:1.5,dash:"dash"})]:[],le(t,s.loss_db,"measured",{color:e.band,width:2.5})],layout:n,config:we}}function ug(s,e=ee){let t=qr(s.frequency_hz),n=Bt(xe({x:"frequency, MHz",y:"return loss, dB",colours:e}));return{data:[le(t,s.limit_return_loss_db,"limit",{color:e.ink,width:1.5}),le(t,s.return_loss_db,"port 1",{color:e.band,width:2.5}),le(t,s.other_return_loss_db,"port 2",{color:e.other,width:1.5,dash:"dash"})],layout:{...n,yaxis:{...n.yaxis,autorange:"reversed"}},config:we}}function hg({title:s,series:e},t=ee){let n=Bt(xe({x:"",y:s,colours:t})),a=[t.band,t.other,t.soft,t.ink];return{data:e.map(({name:i,dates:r,values:o},d)=>({type:"scatter",mode:"lines+markers",x:r,y:o,name:i,line:{color:a[d%a.length],width:2,dash:d<a.length?"solid":"dot"},marker:{size:8,symbol:d},hovertemplate:`%{y:.3g} on %{x}<extra>${i}</extra>`})),layout:{...n,xaxis:{...n.xaxis,type:"date",tickformat:"%Y-%m-%d",nticks:5},yaxis:{...n.yaxis,rangemode:"tozero"}},config:we}}var Xc=class extends w({before:m(u),after:m(u),load:m(u)}){static styles=[y,T,b`
      li { margin-bottom: var(--space-half); }
      ul { padding-left: 1.2em; margin-bottom: var(--space-2); }
    `];willUpdate(){let{before:e,after:t}=this,n=t.line??t.echoes,a=n&&n.profile.earlier.length>0&&{profile:n.profile,places:$s(e)};this._figure=a?i=>sg(a,i):void 0}render(){return l`<section class="panel" id="change"><h2>What changed</h2>
      <ul role="status">${F2(this.before,this.after).map(e=>l`<li>${e}</li>`)}</ul>
      ${this._figure?l`<jw-chart style="--chart:340px" .figure=${this._figure} .load=${this.load}
              label="Reflection against distance, before and after; the places first named are marked"></jw-chart>`:p}
    </section>`}};customElements.define("jw-sweep-change",Xc);var Qc=class extends w({check:m(u),_distance:x(u)}){static styles=[y,b`
      :host { margin-top: var(--space-2); }
      label { font-size: var(--type-text); font-weight: 600; }
      input:not([type='checkbox']) { width: 6.5rem; margin: 0 var(--space-1); }
      p { margin-top: var(--space-1); font-size: var(--type-text); }
      @media print { :host { display: none; } }
    `];constructor(){super(),this._distance=null}render(){let e=this._distance===null?void 0:U2(this.check,this._distance);return l`<label>What is at
        <input id="at" type="number" inputmode="decimal" min="0" step="any" placeholder="12"
          @input=${this._typed}> ${Ln("m")}?</label>
      <div role="status">${e?l`<p>${e.echo} ${e.part}</p>`:p}</div>`}_typed({target:{value:e,validity:t}}){this._distance=e===""||!t.valid?null:ge("m").sent(Number(e))}};customElements.define("jw-sweep-place",Qc);var Zc=class extends w({check:m(u),load:m(u)}){static styles=[y,T,b`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); }
      ol { margin: 0; padding-left: 1.6em; font-size: var(--type-text); }
      li + li { margin-top: var(--space-1); }
      @media print { :host { display: block; } .panel { margin-bottom: 2mm; } }
    `];willUpdate(e){if(!e.has("check"))return;let{check:t}=this;this._figure=n=>tg(t,n)}render(){let{check:e}=this;return l`<section class="panel" id="echoes"><h2>Echoes <small>from the analyser on</small></h2>
        <ol>${e.echoes.map(Wv)}</ol></section>
      <section class="panel" id="distance"><h2>Echoes by distance</h2>
        <jw-chart style="--chart:340px" .figure=${this._figure} .load=${this.load}
          label="Reflection against distance, a mark at each echo"></jw-chart>
        <p class="quiet">
          Shaded: what noise may show. By a velocity factor of ${j(e.velocity_factor,3)}; a distance is wrong
          by as much as the factor is. Sees as far as ${F(e.range_m)}, and shows as one what is nearer than
          ${se(e.resolution_m,"m",2)}.
        </p>
        <jw-sweep-place .check=${e}></jw-sweep-place>
      </section>`}},Wv=({distance_m:s,low_m:e,high_m:t,reflection:n,words:a})=>l`<li>
    <b>${F(s)}</b> (${F(e)} to ${F(t)}): ${a}
    <span class="quiet">${ke(Math.abs(n))} of the wave</span>
  </li>`;customElements.define("jw-sweep-echoes",Zc);var Bv=["load","receiver","explain","power_w","band","frequency_hz","transmitter"],pg=8e6,mg=s=>Object.fromEntries(Object.entries(s.request).filter(([e])=>!Bv.includes(e))),Hv=(s,e)=>s==="antenna"?e.request.load:{kind:"end",what:s};function fg({end:s,length_tolerance:e,window_shape:t,velocity_factor:n},a,i,r){let{elements:o}=a.request,d=o.length>0?{load:Hv(s,a),length_tolerance:e}:{velocity_factor:n};return{...mg(a),...d,touchstone:i.text,...pt({window_shape:t,earlier:r?.text})}}function gg({length_m:s,velocity_factor:e,lowest_hz:t,highest_hz:n,most_points:a},i){return{...mg(i),length_m:s,velocity_factor:e,lowest_hz:t,highest_hz:n,most_points:a}}function bg({name:s,size:e}){return e<=pg?"":`${s} has ${(e/1e6).toFixed(0)} MB; allowed: a Touchstone file of at most ${pg/1e6} MB.`}var eu=class extends w({name:{type:String},label:{type:String},held:{type:String},error:{type:String},_problem:x(u),_over:x(u)}){static styles=[y,b`
      label { display: block; font-size: var(--type-small); font-weight: 600; margin-bottom: var(--space-1); }
      .drop {
        position: relative; display: grid; place-content: center; min-height: 76px;
        padding: var(--space-2) var(--space-3);
        text-align: center; font-size: var(--type-text); overflow-wrap: anywhere;
        border: 2px dashed var(--edge); border-radius: var(--round); background: var(--card);
      }
      .drop:hover, .over { border-color: var(--focus); }
      .drop:focus-within { outline: 3px solid var(--focus); outline-offset: 2px; }
      .drop.bad { border-color: var(--alarm); }
      input { position: absolute; inset: 0; width: 100%; height: 100%; opacity: 0; cursor: pointer; }
      .under {
        display: block; min-height: 1.35em; margin-top: var(--space-half); font-size: var(--type-small);
        color: var(--soft);
      }
      .under.error { color: var(--alarm); font-weight: 600; }
    `];constructor(){super(),Object.assign(this,{held:"",error:"",_problem:"",_over:!1})}render(){let e=this._problem||this.error;return l`<label for=${this.name}>${this.label}</label>
      <div class="drop ${e?"bad":""} ${this._over?"over":""}" @dragenter=${()=>this._over=!0}
        @dragleave=${()=>this._over=!1} @drop=${()=>this._over=!1}>
        <b>${this.held||"Drop the file here, or tap to pick it"}</b>
        <span class="quiet">Touchstone, .s1p or .s2p</span>
        <input id=${this.name} type="file" accept=".s1p,.s2p,.ts,.txt"
          aria-invalid=${e?"true":"false"} aria-describedby="under" @change=${this._picked}>
      </div>
      <span id="under" class=${e?"under error":"under"} role=${e?"alert":"note"}>
        ${e||"It stays on this device, unless the page asks a server."}
      </span>`}async _picked({target:e}){let[t]=e.files;if(!t)return;this._problem=bg(t);let n=this._problem?void 0:await t.text();e.value="",n!==void 0&&$(this,"jw-sweep-file",{name:this.name,file:{name:t.name,text:n}})}};customElements.define("jw-sweep-file",eu);var Rr={line:{name:"Hill hut",elements:[{kind:"joint",family:"n",name:"Shack panel"},{kind:"cable",cable:"rg_223",length_m:3},{kind:"joint",family:"n",name:"Wall"},{kind:"cable",cable:"rg_213",length_m:17},{kind:"joint",family:"n",name:"Mast foot"},{kind:"cable",cable:"rg_213",length_m:9},{kind:"joint",family:"n",name:"Mast top"}],load:{kind:"end",what:"short"},file:{name:"hill-hut.s1p",text:`! Example: a line with its far end shorted, made by a script
# MHz S RI R 50
2.5 -0.0083 -0.8678
5 0.9244 0.0038
7.5 -0.0033 0.8350
10 -0.7435 -0.0334
12.5 0.0702 -0.7717
15 0.8292 0.0861
17.5 -0.1007 0.8003
20 -0.7165 -0.1359
22.5 0.1453 -0.6951
25 0.7379 0.1705
27.5 -0.2085 0.7630
30 -0.6846 -0.2235
32.5 0.2244 -0.6235
35 0.6616 0.2553
37.5 -0.2966 0.6948
40 -0.6381 -0.3117
42.5 0.3119 -0.5655
45 0.5771 0.3163
47.5 -0.3698 0.6093
50 -0.5857 -0.4065
52.5 0.3757 -0.5162
55 0.4833 0.3694
57.5 -0.4310 0.5199
60 -0.5214 -0.4806
62.5 0.4458 -0.4449
65 0.4058 0.4257
67.5 -0.4620 0.4268
70 -0.4275 -0.5320
72.5 0.5207 -0.3786
75 0.3358 0.4658
77.5 -0.4809 0.3287
80 -0.3268 -0.5607
82.5 0.5678 -0.2998
85 0.2492 0.5140
87.5 -0.5043 0.2344
90 -0.2371 -0.5710
92.5 0.6021 -0.1985
95 0.1678 0.5572
97.5 -0.5113 0.1561
100 -0.1343 -0.5518
102.5 0.6163 -0.0998
105 0.0897 0.5749
107.5 -0.5109 0.0583
110 -0.0452 -0.5394
112.5 0.5930 -0.0218
115 -0.0134 0.5817
117.5 -0.5295 -0.0222
120 0.0283 -0.5032
122.5 0.5548 0.0712
125 -0.1050 0.5805
127.5 -0.5141 -0.0943
130 0.1173 -0.4679
132.5 0.5140 0.1515
135 -0.1686 0.5442
137.5 -0.4902 -0.1890
140 0.1903 -0.4386
142.5 0.4602 0.1990
145 -0.2456 0.4822
147.5 -0.4725 -0.2737
150 0.2528 -0.4058
152.5 0.3892 0.2607
155 -0.3028 0.4254
157.5 -0.4235 -0.3246
160 0.3279 -0.3558
162.5 0.3396 0.3180
165 -0.3308 0.3632
167.5 -0.3413 -0.3912
170 0.3969 -0.3015
172.5 0.2876 0.3501
175 -0.3619 0.2739
177.5 -0.2718 -0.4255
180 0.4355 -0.2513
182.5 0.2077 0.3900
185 -0.3875 0.2107
187.5 -0.2057 -0.4264
190 0.4736 -0.1574
192.5 0.1426 0.4426
195 -0.3897 0.1547
197.5 -0.1147 -0.4244
200 0.4898 -0.0874
202.5 0.0866 0.4619
205 -0.3984 0.0672
207.5 -0.0520 -0.4247
210 0.4742 -0.0265
212.5 -0.0001 0.4645
215 -0.4260 -0.0033
217.5 0.0021 -0.3951
220 0.4382 0.0595
222.5 -0.0744 0.4731
225 -0.4102 -0.0554
227.5 0.0919 -0.3713
230 0.4146 0.1181
232.5 -0.1254 0.4437
235 -0.3910 -0.1459
237.5 0.1552 -0.3641
240 0.3765 0.1541
242.5 -0.1997 0.3924
245 -0.3810 -0.2204
247.5 0.1935 -0.3298
250 0.3159 0.2113
252.5 -0.2459 0.3589
255 -0.3420 -0.2575
257.5 0.2687 -0.2751
260 0.2846 0.2711
262.5 -0.2565 0.3031
265 -0.2748 -0.3110
267.5 0.3267 -0.2468
270 0.2444 0.2822
272.5 -0.2912 0.2249
275 -0.2296 -0.3496
277.5 0.3559 -0.1982
280 0.1695 0.3280
282.5 -0.3123 0.1915
285 -0.1727 -0.3409
287.5 0.3856 -0.1137
290 0.1211 0.3803
292.5 -0.3099 0.1378
295 -0.0798 -0.3455
297.5 0.4073 -0.0633
300 0.0758 0.3787
302.5 -0.3247 0.0590
305 -0.0425 -0.3488
307.5 0.3871 -0.0197
310 -0.0124 0.3893
312.5 -0.3491 0.0139
315 0.0022 -0.3167
317.5 0.3640 0.0559
320 -0.0614 0.4007
322.5 -0.3375 -0.0400
325 0.0802 -0.2946
327.5 0.3483 0.1047
330 -0.1043 0.3761
332.5 -0.3146 -0.1225
335 0.1270 -0.2941
337.5 0.3132 0.1274
340 -0.1697 0.3253
342.5 -0.3122 -0.1782
345 0.1621 -0.2604
347.5 0.2629 0.1898
350 -0.2052 0.3055
352.5 -0.2784 -0.2019
355 0.2307 -0.2138
357.5 0.2425 0.2261
360 -0.2105 0.2565
362.5 -0.2116 -0.2641
365 0.2823 -0.2000
367.5 0.2029 0.2286
370 -0.2454 0.1923
372.5 -0.1887 -0.2882
375 0.2948 -0.1542
377.5 0.1340 0.2866
380 -0.2647 0.1658
382.5 -0.1346 -0.2733
385 0.3286 -0.0800
387.5 0.1047 0.3218
390 -0.2489 0.1239
392.5 -0.0545 -0.2788
395 0.3569 -0.0358
397.5 0.0694 0.3230
400 -0.2730 0.0397
402.5 -0.0274 -0.2984
405 0.3250 -0.0006
407.5 -0.0205 0.3309
410 -0.2932 0.0123
412.5 0.0046 -0.2583
415 0.3069 0.0755
417.5 -0.0614 0.3421
420 -0.2733 -0.0268
422.5 0.0795 -0.2411
425 0.3059 0.1007
427.5 -0.0874 0.3115
430 -0.2545 -0.1138
432.5 0.1180 -0.2465
435 0.2612 0.1140
437.5 -0.1542 0.2740
440 -0.2626 -0.1509
442.5 0.1373 -0.2110
445 0.2159 0.1737
447.5 -0.1771 0.2706
450 -0.2176 -0.1704
452.5 0.2110 -0.1613
455 0.2143 0.2029
457.5 -0.1750 0.2154
460 -0.1561 -0.2293
462.5 0.2470 -0.1592
465 0.1668 0.2044
467.5 -0.2118 0.1572
470 -0.1490 -0.2496
472.5 0.2530 -0.1142
475 0.1035 0.2523
477.5 -0.2310 0.1505
480 -0.1034 -0.2305
482.5 0.2932 -0.0366
485 0.0929 0.2827
487.5 -0.2106 0.1054
490 -0.0280 -0.2399
492.5 0.3029 -0.0213
495 0.0543 0.2756
497.5 -0.2321 0.0303
500 -0.0154 -0.2459
`},after:{name:"hill-hut-mended.s1p",text:`! Example: a line with its far end shorted, made by a script
# MHz S RI R 50
2.5 0.0007 -0.9490
5 0.9136 0.0062
7.5 -0.0015 0.8755
10 -0.8662 -0.0376
12.5 0.0898 -0.8740
15 0.8465 0.0879
17.5 -0.0967 0.8147
20 -0.8160 -0.1498
22.5 0.1699 -0.8008
25 0.7803 0.1778
27.5 -0.2113 0.7640
30 -0.7537 -0.2385
32.5 0.2612 -0.7329
35 0.7202 0.2857
37.5 -0.2948 0.6995
40 -0.6795 -0.3232
42.5 0.3557 -0.6654
45 0.6427 0.3640
47.5 -0.3743 0.6160
50 -0.6035 -0.4114
52.5 0.4283 -0.5894
55 0.5641 0.4348
57.5 -0.4525 0.5458
60 -0.5175 -0.4710
62.5 0.4906 -0.4890
65 0.4822 0.4965
67.5 -0.5101 0.4581
70 -0.4201 -0.5265
72.5 0.5455 -0.4037
75 0.3941 0.5429
77.5 -0.5485 0.3677
80 -0.3278 -0.5750
82.5 0.5791 -0.3129
85 0.2867 0.5792
87.5 -0.5907 0.2704
90 -0.2384 -0.5961
92.5 0.6039 -0.2014
95 0.1881 0.6067
97.5 -0.6040 0.1791
100 -0.1339 -0.6049
102.5 0.6122 -0.1029
105 0.0993 0.6086
107.5 -0.6026 0.0787
110 -0.0372 -0.6123
112.5 0.6063 -0.0153
115 -0.0050 0.5960
117.5 -0.5959 -0.0204
120 0.0365 -0.5887
122.5 0.5814 0.0823
125 -0.0973 0.5791
127.5 -0.5700 -0.0979
130 0.1374 -0.5549
132.5 0.5546 0.1731
135 -0.1685 0.5386
137.5 -0.5213 -0.1951
140 0.2237 -0.5258
142.5 0.5150 0.2288
145 -0.2515 0.4911
147.5 -0.4806 -0.2765
150 0.2790 -0.4675
152.5 0.4491 0.3068
155 -0.3244 0.4354
157.5 -0.4258 -0.3313
160 0.3508 -0.3894
162.5 0.3983 0.3743
165 -0.3619 0.3890
167.5 -0.3404 -0.3939
170 0.4052 -0.3216
172.5 0.3331 0.3977
175 -0.4169 0.3079
177.5 -0.2790 -0.4382
180 0.4383 -0.2591
182.5 0.2496 0.4416
185 -0.4548 0.2401
187.5 -0.2145 -0.4500
190 0.4702 -0.1627
192.5 0.1697 0.4750
195 -0.4620 0.1790
197.5 -0.1202 -0.4689
200 0.4908 -0.0857
202.5 0.1030 0.4781
205 -0.4756 0.0839
207.5 -0.0514 -0.4834
210 0.4847 -0.0267
212.5 0.0040 0.4764
215 -0.4794 0.0061
217.5 0.0070 -0.4665
220 0.4634 0.0641
222.5 -0.0767 0.4719
225 -0.4565 -0.0525
227.5 0.1056 -0.4367
230 0.4548 0.1366
232.5 -0.1225 0.4456
235 -0.4175 -0.1446
237.5 0.1710 -0.4188
240 0.4249 0.1830
242.5 -0.2102 0.4000
245 -0.3921 -0.2166
247.5 0.2130 -0.3782
250 0.3674 0.2445
252.5 -0.2583 0.3714
255 -0.3421 -0.2541
257.5 0.2811 -0.3107
260 0.3318 0.3046
262.5 -0.2902 0.3275
265 -0.2723 -0.3178
267.5 0.3442 -0.2660
270 0.2800 0.3225
272.5 -0.3350 0.2542
275 -0.2272 -0.3553
277.5 0.3577 -0.2104
280 0.1999 0.3692
282.5 -0.3711 0.2144
285 -0.1745 -0.3625
287.5 0.3892 -0.1136
290 0.1423 0.3962
292.5 -0.3733 0.1597
295 -0.0905 -0.3771
297.5 0.4141 -0.0660
300 0.0882 0.3939
302.5 -0.3851 0.0682
305 -0.0391 -0.3940
307.5 0.4031 -0.0089
310 -0.0065 0.3929
312.5 -0.3930 0.0149
315 0.0065 -0.3841
317.5 0.3826 0.0770
320 -0.0644 0.4018
322.5 -0.3705 -0.0296
325 0.0906 -0.3606
327.5 0.3772 0.1234
330 -0.0953 0.3691
332.5 -0.3332 -0.1308
335 0.1439 -0.3497
337.5 0.3492 0.1513
340 -0.1823 0.3315
342.5 -0.3203 -0.1766
345 0.1744 -0.3074
347.5 0.3029 0.2219
350 -0.2264 0.3165
352.5 -0.2757 -0.2057
355 0.2515 -0.2457
357.5 0.2828 0.2619
360 -0.2336 0.2759
362.5 -0.2081 -0.2592
365 0.2927 -0.2152
367.5 0.2406 0.2765
370 -0.2834 0.2098
372.5 -0.1835 -0.2959
375 0.2973 -0.1629
377.5 0.1596 0.3128
380 -0.3146 0.1832
382.5 -0.1347 -0.2924
385 0.3304 -0.0735
387.5 0.1213 0.3469
390 -0.3036 0.1411
392.5 -0.0468 -0.3126
395 0.3547 -0.0378
397.5 0.0738 0.3301
400 -0.3101 0.0564
402.5 -0.0264 -0.3331
405 0.3240 0.0088
407.5 -0.0226 0.3343
410 -0.3367 0.0174
412.5 0.0110 -0.3067
415 0.3252 0.0891
417.5 -0.0620 0.3480
420 -0.2967 -0.0218
422.5 0.0892 -0.2916
425 0.3309 0.1117
427.5 -0.0875 0.3103
430 -0.2702 -0.1090
432.5 0.1280 -0.2860
435 0.2931 0.1316
437.5 -0.1672 0.2743
440 -0.2674 -0.1547
442.5 0.1535 -0.2471
445 0.2535 0.2032
447.5 -0.1849 0.2767
450 -0.2153 -0.1700
452.5 0.2229 -0.1897
455 0.2506 0.2310
457.5 -0.1966 0.2341
460 -0.1601 -0.2224
462.5 0.2475 -0.1770
465 0.2022 0.2328
467.5 -0.2442 0.1695
470 -0.1429 -0.2518
472.5 0.2515 -0.1168
475 0.1280 0.2828
477.5 -0.2618 0.1590
480 -0.0984 -0.2426
482.5 0.2848 -0.0395
485 0.1062 0.2989
487.5 -0.2452 0.1182
490 -0.0279 -0.2701
492.5 0.3007 -0.0132
495 0.0517 0.2820
497.5 -0.2707 0.0362
500 -0.0101 -0.2845
`}},jumper:{name:"Jumper",elements:[{kind:"joint",family:"n"},{kind:"cable",cable:"rg_223",length_m:1.5},{kind:"joint",family:"n"}],load:{kind:"end",what:"matched"},file:{name:"jumper.s2p",text:`! Example: a jumper, made by a script
# MHz S RI R 50
20 -0.0115 -0.0530 0.4919 -0.7874 0.4933 -0.7910 0.0680 -0.0026
40 -0.0300 0.0358 -0.3984 -0.8395 -0.4002 -0.8433 0.0531 -0.0052
60 0.0533 0.0210 -0.9179 -0.1185 -0.9141 -0.1172 0.0539 0.0065
80 0.0016 -0.0517 -0.5961 0.7097 -0.5974 0.7122 0.0692 -0.0040
100 -0.0386 0.0298 0.2736 0.8803 0.2758 0.8800 0.0582 -0.0012
120 0.0390 0.0404 0.8852 0.2400 0.8846 0.2490 0.0558 0.0079
140 0.0139 -0.0415 0.6820 -0.6136 0.6834 -0.6088 0.0652 0.0110
160 -0.0514 0.0171 -0.1451 -0.8990 -0.1463 -0.9007 0.0574 -0.0029
180 0.0296 0.0528 -0.8372 -0.3658 -0.8393 -0.3650 0.0570 0.0111
200 0.0339 -0.0274 -0.7575 0.5080 -0.7576 0.5084 0.0677 0.0181
220 -0.0460 0.0008 0.0208 0.9083 0.0196 0.9056 0.0669 -0.0101
240 0.0166 0.0584 0.7791 0.4717 0.7735 0.4775 0.0507 0.0149
260 0.0380 -0.0170 0.8155 -0.3962 0.8164 -0.3927 0.0657 0.0203
280 -0.0380 -0.0146 0.1106 -0.8982 0.1082 -0.8942 0.0613 -0.0048
300 -0.0026 0.0569 -0.6993 -0.5749 -0.6931 -0.5746 0.0485 0.0017
320 0.0563 -0.0034 -0.8557 0.2729 -0.8558 0.2670 0.0604 0.0266
340 -0.0234 -0.0202 -0.2328 0.8658 -0.2331 0.8721 0.0672 0.0013
360 -0.0110 0.0599 0.6072 0.6646 0.6013 0.6685 0.0526 0.0095
380 0.0538 0.0133 0.8850 -0.1454 0.8863 -0.1412 0.0638 0.0311
400 -0.0083 -0.0314 0.3518 -0.8213 0.3549 -0.8263 0.0811 0.0095
420 -0.0222 0.0501 -0.4982 -0.7395 -0.4994 -0.7436 0.0525 0.0062
440 0.0506 0.0345 -0.8907 0.0212 -0.8876 0.0194 0.0575 0.0337
460 0.0060 -0.0259 -0.4693 0.7647 -0.4675 0.7591 0.0852 0.0194
480 -0.0302 0.0419 0.3844 0.8045 0.3885 0.7986 0.0585 0.0027
500 0.0431 0.0529 0.8838 0.1057 0.8801 0.1053 0.0534 0.0342
520 0.0228 -0.0198 0.5682 -0.6840 0.5679 -0.6764 0.0890 0.0280
540 -0.0312 0.0290 -0.2617 -0.8484 -0.2707 -0.8478 0.0593 0.0007
560 0.0329 0.0565 -0.8565 -0.2384 -0.8502 -0.2341 0.0521 0.0268
580 0.0414 -0.0142 -0.6595 0.5884 -0.6572 0.5922 0.0855 0.0338
600 -0.0301 0.0153 0.1444 0.8792 0.1431 0.8736 0.0784 -0.0016
620 0.0261 0.0665 0.8053 0.3466 0.8155 0.3537 0.0510 0.0243
640 0.0487 0.0039 0.7306 -0.4972 0.7294 -0.4879 0.0826 0.0380
660 -0.0176 0.0055 -0.0132 -0.8837 -0.0154 -0.8796 0.0887 0.0000
680 0.0091 0.0666 -0.7497 -0.4559 -0.7464 -0.4598 0.0506 0.0192
700 0.0568 0.0182 -0.7943 0.3792 -0.7910 0.3801 0.0783 0.0489
720 -0.0038 -0.0088 -0.1123 0.8737 -0.1094 0.8710 0.0949 0.0116
740 0.0045 0.0575 0.6754 0.5601 0.6734 0.5569 0.0526 0.0085
760 0.0579 0.0310 0.8373 -0.2613 0.8345 -0.2550 0.0676 0.0501
780 0.0121 -0.0059 0.2329 -0.8413 0.2344 -0.8459 0.1034 0.0139
800 0.0034 0.0468 -0.5859 -0.6475 -0.5914 -0.6466 0.0602 0.0016
820 0.0586 0.0448 -0.8602 0.1383 -0.8625 0.1379 0.0656 0.0489
840 0.0254 -0.0084 -0.3490 0.8024 -0.3496 0.7999 0.1055 0.0201
860 -0.0007 0.0398 0.4823 0.7280 0.4826 0.7248 0.0689 -0.0028
880 0.0521 0.0509 0.8709 -0.0146 0.8640 -0.0176 0.0647 0.0489
900 0.0425 -0.0009 0.4537 -0.7377 0.4590 -0.7385 0.1157 0.0390
920 0.0007 0.0251 -0.3775 -0.7841 -0.3760 -0.7835 0.0824 -0.0103
940 0.0444 0.0575 -0.8604 -0.1120 -0.8573 -0.1075 0.0536 0.0375
960 0.0465 0.0040 -0.5592 0.6657 -0.5550 0.6641 0.1101 0.0507
980 0.0043 0.0165 0.2530 0.8276 0.2565 0.8313 0.0964 -0.0077
1000 0.0398 0.0544 0.8335 0.2297 0.8271 0.2325 0.0524 0.0283
`}}};var Nr="own-",Ht="none",Lr=s=>[...Object.entries(Rr).map(([e,{name:t}])=>[e,`Example: ${t}`]),...s.lines.map(({name:e},t)=>[`${Nr}${t}`,e||`Line ${t+1}`]),[Ht,"No line described: echoes by distance"]],_g=s=>`${Nr}${s}`,tu=s=>s.startsWith(Nr),Ut=s=>Object.hasOwn(Rr,s),Uv={name:"a line not described",request:{elements:[]},file:void 0,after:void 0};function cn(s,e){if(s===Ht)return Uv;if(Ut(s)){let{name:n,elements:a,load:i,file:r,after:o}=Rr[s];return{name:n,request:{elements:a,load:i},file:r,after:o}}let t=e.lines[Number(s.slice(Nr.length))];return tu(s)&&t?{...t,file:void 0,after:void 0}:cn("line",e)}var su=class extends w({state:m(u),document:m(u),file:m(u),earlier:m(u),refusal:m(u)},O){static styles=[y,ne,b`
      :host {
        display: grid; gap: var(--space-2); padding: var(--space-3); background: var(--card);
        border: 1px solid var(--line);
        border-radius: var(--round); align-content: start;
      }
      h2 { font-size: var(--type-lead); }
      .of label { display: block; font-size: var(--type-small); font-weight: 600; margin-bottom: var(--space-1); }
      p a { display: inline-grid; min-height: var(--target); align-items: center; }
      p { font-size: var(--type-text); }
    `];render(){let{state:e,file:t,earlier:n}=this,a=this._refusalOf("elements")??this._refusalOf("load");return l`<h2>The sweep</h2>
      <jw-sweep-file name="touchstone" label="Sweep from your analyser" held=${t?.name??""}
        error=${this._fileProblem("touchstone",t)}></jw-sweep-file>
      <div class="of">
        <label for="of">Line it was taken on</label>
        <select id="of" @change=${i=>$(this,"jw-sweep-change",{changes:{of:i.target.value}})}>
          ${Lr(this.document).map(([i,r])=>l`<option value=${i} .selected=${i===e.of}>${r}</option>`)}
        </select>
      </div>
      ${Fv(e.of)}
      ${a?l`<p class="error" role="alert">${a.message}</p>`:p}
      <div class="fields" @jw-change=${this._changed}>
        ${e.of===Ht?this._field("velocity_factor"):l`${this._field("end")}${this._field("length_tolerance")}`}
      </div>
      <details ?open=${!!n||be(this.refusal)==="earlier"}>
        <summary>Earlier sweep and window <small>${n?.name??"none"}</small></summary>
        <jw-sweep-file name="earlier" label="An earlier sweep to compare with" held=${n?.name??""}
          error=${this._fileProblem("earlier",n)}></jw-sweep-file>
        ${n?l`<button @click=${()=>$(this,"jw-sweep-forget")}>No earlier sweep</button>`:p}
        <div class="fields" @jw-change=${this._changed}>${this._field("window_shape")}</div>
      </details>`}_refusalOf(e){return be(this.refusal)===e?this.refusal:void 0}_fileProblem(e,t){let n=this._refusalOf(e);return n&&t?dn(n,t.name):""}_field(e){return I(this.vocabulary,`sweep.${e}`,this.state[e],this._refusalOf(e)?.message)}_changed(e){e.stopPropagation(),e.detail.live||$(this,"jw-sweep-change",{changes:D(e)})}},Fv=s=>Ut(s)?l`<p class="quiet">An invented line and measurement, to show what comes out.</p>`:s===Ht?l`<p class="quiet">With the line described, the page can name the joint.</p>`:l`<p><a href="#view=line">Change the line in the Line view</a></p>`;customElements.define("jw-sweep-form",su);var wg=()=>new Date().toISOString().slice(0,10),nu=class extends w({entries:m(u),line:{type:String},keepable:{type:Boolean},load:m(u),_date:x(u)}){static styles=[y,T,Ls,b`
      .bar {
        display: flex; flex-wrap: wrap; gap: var(--space-2) var(--space-3); align-items: end;
        margin-bottom: var(--space-2);
      }
      .bar label:not(.pick) { font-size: var(--type-small); font-weight: 600; }
      .bar input[type='date'] { width: auto; }
      .scroll { overflow-x: auto; }
      @media print { .bar, td:last-child, th:last-child { display: none; } }
    `];constructor(){super(),this._date=wg()}willUpdate(e){if(!e.has("entries")&&!e.has("line"))return;let t=Bm(this.entries,this.line);this._figure=t&&(n=>hg(t,n)),this._title=t?.title}render(){let{entries:e}=this,t=a=>this._date=a.target.value||wg(),n=()=>qs("jointwise-sweeps.json",Um(e));return l`<section class="panel" id="kept">
      <h2>Kept sweeps <small>in this browser only</small></h2>
      <div class="bar">
        <label>Measured on <input id="day" type="date" .value=${this._date} @change=${t}></label>
        <button id="keep" ?disabled=${!this.keepable}
          @click=${()=>$(this,"jw-sweep-keep",{date:this._date})}>Keep this sweep</button>
        <button id="export" ?disabled=${e.length===0} @click=${n}>Export</button>
        <label class="pick">Import<input id="import" type="file" accept=".json" @change=${this._import}></label>
      </div>
      ${e.length===0?l`<p class="quiet">None yet. Keep one after each inspection, and what changes will show.</p>`:this._table()}
      ${this._figure?l`<jw-chart id="history" .figure=${this._figure} .load=${this.load}
              label="${this._title} of ${this.line} over the days of the kept sweeps"></jw-chart>`:p}
    </section>`}_table(){return l`<div class="scroll"><table class="plain">
      <thead>
        <tr>
          <th scope="col">Day</th><th scope="col">Line</th><th scope="col">Result</th><th scope="col">Do</th>
        </tr>
      </thead>
      <tbody>
        ${this.entries.toReversed().map(e=>this._row(e))}
      </tbody>
    </table></div>`}_row(e){let{date:t,line:n,verdict:a}=e;return l`<tr>
      <td>${t}</td><th scope="row">${n}</th><td>${a}</td>
      <td>
        <button aria-label="Compare with the sweep of ${n} of ${t}"
          @click=${()=>$(this,"jw-sweep-compare",{entry:e})}>Compare</button>
        <button aria-label="Remove the sweep of ${n} of ${t}"
          @click=${()=>$(this,"jw-sweep-drop",{entry:e})}>Remove</button>
      </td>
    </tr>`}async _import({target:e}){let[t]=e.files;if(!t)return;let n=await t.text();e.value="";try{$(this,"jw-sweep-import",{entries:Fm(n)})}catch(a){if(!(a instanceof RangeError))throw a;$(this,"jw-notice",{text:`${t.name} was not taken. ${a.message}`})}}};customElements.define("jw-sweep-history",nu);var Dv=["lowest_hz","highest_hz","most_points","length_m","velocity_factor"],Gv="The range of your analyser must end at twice its beginning or higher.",au=class extends w({hunt:m(u),state:m(u),document:m(u),file:m(u),span:m(u),spanRefusal:m(u),result:m(u),refusal:m(u)},O){static styles=[y,ne,b`
      :host {
        padding: var(--space-3); background: var(--card); border: 1px solid var(--line); border-radius: var(--round);
      }
      h2 { font-size: var(--type-lead); margin-bottom: var(--space-1); }
      ol.steps { list-style: none; margin: 0; padding: 0; }
      .steps > li {
        border-top: 1px solid var(--line); border-left: 4px solid transparent; padding-left: var(--space-2);
      }
      .steps > li[data-open] { border-left-color: var(--accent); }
      h3 { font-weight: 600; }
      h3 button {
        display: grid; grid-template-columns: 1.8em minmax(0, 1fr); width: 100%;
        padding: var(--space-2) var(--space-half); font-weight: 600; font-size: var(--type-text); align-items: center;
      }
      h3 button[aria-expanded='true'] { font-weight: 700; }
      h3 small { grid-column: 2; font-weight: 400; color: var(--soft); overflow-wrap: anywhere; }
      .body {
        display: grid; gap: var(--space-2); padding: 0 var(--space-half) var(--space-3) 1.8em;
        font-size: var(--type-text); justify-items: start;
      }
      .body[hidden] { display: none; }
      .body > * { max-width: 100%; min-width: 0; }
      .body ol, .body ul { margin: 0; padding-left: 1.2em; }
      .body ul { list-style: disc; }
      .body li + li { margin-top: var(--space-1); }
      .hands {
        padding: var(--space-2) var(--space-3); border-left: 4px solid var(--alarm); background: var(--alarm-wash);
        border-radius: 4px;
      }
      .next { background: var(--ink); border-color: var(--ink); color: var(--paper); font-weight: 600; }
      .buttons { display: flex; flex-wrap: wrap; gap: var(--space-2); }
      .of { width: 100%; }
      .of label { display: block; font-size: var(--type-small); font-weight: 600; margin-bottom: var(--space-1); }
      .fields { width: 100%; }
      dl { display: flex; flex-wrap: wrap; gap: var(--space-1) var(--space-4); }
      dt { font-size: var(--type-small); color: var(--soft); }
      dd { font-size: var(--type-lead); font-weight: 700; }
      jw-sweep-file { width: 100%; }
      .places { font-weight: 650; }
      @media (max-width: 600px) { .body { padding-left: var(--space-half); } }
    `];updated(e){let t=e.get("hunt");t&&t.at!==this.hunt.at&&this._pressed&&N(this.renderRoot,`#step-${this.hunt.at}`).focus(),this._pressed=!1}render(){return l`<h2>Find it step by step</h2>
      <ol class="steps" @jw-change=${this._changed}>${Wt.map(([e,t],n)=>this._step(e,t,n))}</ol>`}_step(e,t,n){let a=e===this.hunt.at,i=this._done(e);return l`<li ?data-open=${a}>
      <h3><button id="step-${e}" class="head" aria-expanded=${a?"true":"false"} aria-controls="body-${e}"
        @click=${()=>this._go(e)}>
        <span aria-hidden="true">${n+1}</span><span>${t}</span>${i?l`<small>${i}</small>`:p}
      </button></h3>
      <div class="body" id="body-${e}" ?hidden=${!a}>${a?this._body(e):p}</div>
    </li>`}_done(e){let{file:t,hunt:n,span:a,state:i}=this;return e==="line"?i.of===Ht?"none described":cn(i.of,this.document).name:e==="span"&&a?`${M(a.low_hz)} to ${M(a.high_hz)}, ${a.points} points`:e==="end"?this.vocabulary.wordsOf("sweep.end").options?.[i.end]:e==="sweep"?(n.before?.file??t)?.name:e==="again"&&n.before?t?.name:""}_body(e){switch(e){case"line":return this._line();case"safe":return l`<ol>${J2.map(t=>l`<li>${t}</li>`)}</ol>${this._next("Off and locked out")}`;case"span":return this._span();case"calibrate":return this._calibrate();case"end":return l`<p class="hands">${Kc}</p>${this._field("end")}<p>${X2[this.state.end]}</p>
          ${this._next("The far end is ready")}`;case"sweep":return this._sweep();case"place":return this._place();case"again":return this._again();default:return this._compare()}}_line(){let{state:e}=this;return l`<p>
        With its parts described, the page knows what a good line of this kind shows, and can name the joint. Without
        them it shows echoes by distance.
      </p>
      <div class="of">
        <label for="of">The line</label>
        <select id="of" @change=${n=>$(this,"jw-sweep-change",{changes:{of:n.target.value}})}>
          ${Lr(this.document).map(([n,a])=>l`<option value=${n} .selected=${n===e.of}>${a}</option>`)}
        </select>
      </div>
      ${e.of===Ht?l`<div class="fields">${this._field("length_m")}${this._field("velocity_factor")}</div>`:Ut(e.of)?l`<p class="quiet">An invented line and measurement, to try the steps on.</p>`:l`<a href="#view=line">Change the line in the Line view</a>`}
      ${this._next("This is the line")}`}_span(){let{span:e}=this;return l`<div class="fields">
        ${this._field("lowest_hz")}${this._field("highest_hz")}${this._field("most_points")}
      </div>
      ${this._spanTrouble()}
      ${e?l`<dl id="span">
                <div><dt>Start</dt><dd>${M(e.low_hz)}</dd></div>
                <div><dt>Stop</dt><dd>${M(e.high_hz)}</dd></div>
                <div><dt>Points</dt><dd>${e.points}</dd></div>
              </dl>
              <ul>${e.reasons.map(t=>l`<li>${t}</li>`)}</ul>`:l`<p class="quiet">${this.spanRefusal?"":"Calculating…"}</p>`}
      ${this._next("The analyser is set")}`}_spanTrouble(){let e=this.spanRefusal;if(!e||this._refusalOf(be(e)))return p;let t=be(e)==="highest_hz"?Gv:e.message;return l`<p class="error" role="alert">${t}</p>`}_calibrate(){let{span:e}=this,t=e?`, over ${M(e.low_hz)} to ${M(e.high_hz)}`:"";return l`<ol>
        <li>Let the analyser warm up for as long as its maker says.</li>
        <li>Calibrate open, short and load${t}, at the very connector that the line goes on, adapter included.</li>
        <li>Check: with the short still on, all comes back at every frequency; with the load on, next to nothing.</li>
      </ol>
      <p>Why: what calibration leaves over looks like a bad joint next to the analyser.</p>
      ${this._next("Calibrated")}`}_sweep(){let{file:e,hunt:t}=this,n=t.before?.file??e;return l`<p>Screw the line on, leave it alone while it sweeps, and save a one-port Touchstone file (.s1p).</p>
      <jw-sweep-file name="touchstone" label="The sweep" held=${n?.name??""}
        error=${t.before?"":this._problem()}></jw-sweep-file>
      ${this._verdict()} ${this.result?this._next("Where do I go?"):p}`}_place(){if(!this.result)return this._missing();let{places:e,work:t,why:n}=Q2(this.hunt.before?.result??this.result);return l`<p>${n}</p>
      ${e.length>0?l`<ul class="places">${e.map(a=>l`<li>${a}</li>`)}</ul>`:p}
      ${t.length>0?l`<p class="hands">${Kc}</p>
              <ol>${t.map(a=>l`<li>${a}</li>`)}</ol>`:p}
      ${this._next(e.length>0?"Done there":"Sweep again")}`}_again(){if(!this.result&&!this.hunt.before)return this._missing();let{after:e}=cn(this.state.of,this.document),t=()=>{this._pressed=!0,$(this,"jw-sweep-file",{name:"again",file:e})};return l`<p>
        Same end, same span, same calibration: then what differs is what you did. Leave the line alone while it sweeps.
      </p>
      <jw-sweep-file name="again" label="The sweep after it" held=${this.hunt.before?this.file?.name??"":""}
        error=${this.hunt.before?this._problem():""}></jw-sweep-file>
      ${e?l`<button @click=${t}>Use the example sweep</button>`:p}`}_compare(){let{before:e}=this.hunt;if(!e)return this._missing();let t=()=>this._send({at:"place"}),n=()=>this._send({at:Wt[0][0]});return l`<p>Both sweeps over distance, and what changed, stand in the answer.</p>
      ${this._verdict()}
      <div class="buttons">
        <button class="next" @click=${t}>Go on from this sweep</button>
        <button @click=${n}>Begin again</button>
      </div>`}_missing(){return l`<p>First give the sweep.</p>
      <button class="next" @click=${()=>this._go("sweep")}>To the sweep</button>`}_verdict(){return l`<p role="status"><b>${this.result?.verdict??""}</b></p>`}_problem(){let{file:e,refusal:t}=this;return t&&e?dn(t,e.name):""}_next(e){return l`<button class="next" @click=${()=>this._go(K2(this.hunt.at))}>${e}</button>`}_field(e){return I(this.vocabulary,`sweep.${e}`,this.state[e],this._refusalOf(e)?.message)}_refusalOf(e){let t=this.spanRefusal;return Dv.includes(e)&&be(t)===e&&!t?.allowed.includes("where its range begins")?t:void 0}_changed(e){e.stopPropagation(),e.detail.live||$(this,"jw-sweep-change",{changes:D(e)})}_go(e){this._send({...this.hunt,at:e})}_send(e){this._pressed=!0,$(this,"jw-sweep-hunt",{hunt:e})}};customElements.define("jw-sweep-hunt",au);var Kv=2,iu=class extends w({check:m(u),load:m(u),_overFrequency:x(u)}){static styles=[y,T,b`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); }
      .pair {
        display: grid; grid-template-columns: repeat(auto-fit, minmax(min(420px, 100%), 1fr)); gap: var(--space-3);
      }
      .scroll { overflow-x: auto; }
      ol { list-style: none; margin: 0; padding: 0; }
      #parts li {
        display: grid; grid-template-columns: 1.6em minmax(0, 1fr); gap: 0 var(--space-2); padding: var(--space-1) 0;
        border-bottom: 1px solid var(--line); font-size: var(--type-text);
      }
      #parts li:last-child { border-bottom: 0; }
      #parts li[data-accused] { background: var(--alarm-wash); font-weight: 650; }
      #parts .sign { grid-row: span 2; align-self: start; text-align: center; font-weight: 700; }
      @media (min-width: 700px) {
        #parts li { grid-template-columns: 1.6em minmax(0, 22em) minmax(0, 1fr); }
        #parts .sign { grid-row: auto; }
      }
      #parts .cable { color: var(--soft); }
      tr[data-accused] { background: var(--alarm-wash); font-weight: 650; }
      td.words { min-width: 9em; }
      details.panel { padding-top: var(--space-half); padding-bottom: var(--space-half); }
      details[open].panel { padding-bottom: var(--space-3); }
      summary { cursor: pointer; min-height: var(--target); align-content: center; font-weight: 600; }
      p + .scroll { margin-top: var(--space-2); }
      @media print { :host, .pair { display: block; } .panel { margin-bottom: 2mm; } .scroll { overflow: visible; } }
    `];willUpdate(e){if(!e.has("check"))return;let{check:t}=this;this._distance=n=>eg(t,n),this._returned=n=>rg(t,n),this._smith=n=>lg(t,n)}updated(){Qs(this.renderRoot.querySelectorAll(".scroll"))}render(){let{check:e}=this;return l`<section class="panel" id="parts"><h2>Part by part <small>from the analyser on</small></h2>
        <ol>${I2(e).map(n=>this._part(n))}</ol></section>
      <section class="panel" id="distance">
        <h2>Echoes along the line</h2>
        <jw-chart style="--chart:340px" .figure=${this._distance} .load=${this.load}
          label=${"Reflection against distance, measured and expected, a mark at each joint; the same numbers stand in the table of joints"}></jw-chart>
        <p class="quiet">
          Shaded: what a good line may show. The echo of the line’s end may run out of the picture.
        </p>
        <jw-sweep-place .check=${e}></jw-sweep-place>
      </section>
      ${this._joints()} ${this._fit()}
      <details class="panel more" @toggle=${n=>this._overFrequency=n.target.open} id="frequency">
        <summary>Return loss and Smith chart</summary>
        ${this._overFrequency?this._charts():p}
      </details>`}_part(e){let t=Pt(e.element,this.check);return l`<li data-element=${e.element} ?data-accused=${t} class=${"from_m"in e?"cable":""}>
      <span class=${t?"sign bad":"sign"} aria-hidden="true">${P2[e.state]}</span>
      <span>${e.element+1} · ${e.name}, ${e.place}</span>
      <span>${e.words}</span>
    </li>`}_charts(){return l`<div class="pair">
      <section id="returned"><h3>Return loss at the analyser</h3>
        <jw-chart .figure=${this._returned} .load=${this.load} label=${"Return loss against frequency: measured, expected of a sound line, and as fitted"}></jw-chart></section>
      <section id="smith"><h3>Smith chart at the analyser</h3>
        <jw-chart style="--chart:340px" .figure=${this._smith} .load=${this.load}
          label="Measured and fitted reflection on the Smith chart"></jw-chart></section>
    </div>`}_joints(){let{check:e}=this,t=e.joints.some(({change:n})=>n!==null);return l`<details class="panel more" id="joints">
      <summary>Numbers at each joint</summary>
      <div class="scroll"><table class="plain">
        <thead>
          <tr>
            <th scope="col">Joint</th><th scope="col" class="number">At</th><th scope="col">Finding</th>
            <th scope="col" class="number">Measured</th><th scope="col" class="number">Expected</th>
            <th scope="col" class="number">Excess</th><th scope="col" class="number">Threshold</th>
            ${t?l`<th scope="col" class="number">Change</th>`:p}
            <th scope="col" class="number">Smallest fault</th>
          </tr>
        </thead>
        <tbody>
          ${e.joints.map(n=>this._joint(n,t))}
        </tbody>
      </table></div>
      <p class="quiet">
        Reflections are shares of the wave sent. The last column is the smallest added resistance and the smallest
        capacitance across, as of water, that this sweep would show there. It
        reaches ${F(e.range_m)} and keeps echoes ${se(e.resolution_m,"m",2)} apart
        (${e.transform}, side lobes ${j(e.side_lobe_db,3)} dB down); velocity and loss of the cables are
        taken out.
      </p>
    </details>`}_joint(e,t){let{check:n}=this,a=Pt(e.element,n),i=()=>`; ${se(e.nearest_m,"m",2)} to the next, too near for an echo of its own`;return l`<tr data-element=${e.element} ?data-accused=${a}>
      <th scope="row">${e.element+1} · ${e.name}</th>
      <td class="number">${se(e.distance_m,"m",3)}</td>
      <td class="words">${e.words}${e.separate?"":i()}</td>
      <td class="number">${ke(e.measured)}</td><td class="number">${ke(e.expected)}</td>
      <td class="number">${ke(e.excess)}</td><td class="number">${ke(e.threshold)}</td>
      ${t?l`<td class="number">${ke(e.change)}</td>`:p}
      <td class="number">${B2(e)}</td>
    </tr>`}_fit(){let{candidates:e,deviations:t,floor:n,noise:a}=this.check;return l`<details class="panel more" id="fit">
      <summary>What explains the sweep</summary>
      ${e.length===0?l`<p>
              A sound line leaves ${It(a)} of the reflection unexplained. Everyday lines leave
              ${It(n)}, which counts as no fault.
            </p>`:Vv(e)}
      <h3>Good parts as fitted</h3>
      <div class="scroll"><table class="plain">
        <thead>
          <tr>
            <th scope="col">Cable</th><th scope="col">What</th>
            <th scope="col" class="number">Off by</th><th scope="col" class="number">±</th>
            <th scope="col" class="number">Usual</th>
          </tr>
        </thead>
        <tbody>
          ${t.map(Jv)}
        </tbody>
      </table></div>
    </details>`}},Vv=s=>l`<div class="scroll"><table class="plain">
      <thead>
        <tr>
          <th scope="col">Where</th><th scope="col">What it does</th><th scope="col">Size, with its bounds</th>
          <th scope="col" class="number">Odds</th><th scope="col" class="number">Explains</th>
          <th scope="col" class="number">Leaves</th>
        </tr>
      </thead>
      <tbody>
        ${s.map(Yv)}
      </tbody>
    </table></div>
    <p class="quiet">
      Bounds are one standard deviation. Odds are against a sound line; what is explained and what is left are rms of
      the reflection.
    </p>`,Yv=s=>l`<tr>
    <th scope="row">${s.element+1} · ${s.joint}, ${F(s.distance_m)}</th>
    <td class="words">${s.name}</td>
    <td class="words">${s.sizes.map(e=>l`<div>${W2(e)}</div>`)}</td>
    <td class="number">${H2(s)}</td><td class="number">${It(s.reflection)}</td>
    <td class="number">${It(s.misfit)}</td>
  </tr>`,Jv=({element:s,part:e,what:t,share:n,uncertainty:a,usual:i})=>l`<tr>
    <th scope="row">${s+1} · ${e}</th><td>${t}</td>
    <td class="number">${Math.abs(n)>Kv*i?"! ":""}${It(n)}</td>
    <td class="number">${It(a)}</td><td class="number">${It(i)}</td>
  </tr>`;customElements.define("jw-sweep-line",iu);var ru=s=>s===null?"–":`${s.toFixed(2).replace("-","−")} dB`,Qv=s=>s<0?"✓ within the limit, as far as calibration tells":"✓ within the limit",ou=class extends w({part:m(u),load:m(u)}){static styles=[y,T,b`
      :host {
        display: grid; grid-template-columns: repeat(auto-fit, minmax(min(420px, 100%), 1fr)); gap: var(--space-3);
      }
      .wide { grid-column: 1 / -1; }
      @media print { :host { display: block; } .panel { margin-bottom: 2mm; } }
    `];willUpdate(e){if(!e.has("part"))return;let{part:t}=this;this._loss=n=>cg(t,n),this._returned=n=>ug(t,n),this._smith=n=>dg(t,n)}render(){let{part:e}=this;return l`<section class="panel wide" id="part"><h2>Against the limits of its parts</h2>
        <table class="plain"><tbody>
          ${this._row("Loss",e.loss_passed,e.worst_loss_margin_db,e.worst_loss_at_hz)}
          ${this._row("Match",e.match_passed,e.worst_match_margin_db,e.worst_match_at_hz)}
          <tr>
            <th scope="row">Resistance in series</th>
            <td colspan="2">
              ${B(e.resistance_ohm,"Ω",3)} ± ${B(e.resistance_uncertainty_ohm,"Ω",2)},
              from the steady part of the excess loss
            </td>
          </tr>
          <tr>
            <th scope="row">Excess like skin effect</th>
            <td colspan="2">${ru(e.skin_excess_db_at_top)} at the upper edge</td>
          </tr>
          ${e.trend?Zv(e.trend):p}
        </tbody></table>
      </section>
      <section class="panel" id="loss"><h2>Loss</h2>
        <jw-chart .figure=${this._loss} .load=${this.load} label=${"Loss against frequency: measured, expected, and what its parts may lose"}></jw-chart></section>
      <section class="panel" id="returned"><h2>Return loss</h2>
        <jw-chart .figure=${this._returned} .load=${this.load} label=${"Return loss into both ports against frequency, and the least its parts may have"}></jw-chart></section>
      <section class="panel" id="smith"><h2>Smith chart into port 1</h2>
        <jw-chart style="--chart:340px" .figure=${this._smith} .load=${this.load}
          label="Reflection into port 1 on the Smith chart"></jw-chart></section>`}get _overWords(){return this.part.finding==="cannot tell"?"? over the limit, by less than calibration leaves":"! over the limit"}_row(e,t,n,a){return l`<tr>
      <th scope="row">${e}</th><td>${t?Qv(n):this._overWords}</td>
      <td class="number">margin ${ru(n)} at ${a===null?"–":M(a)}</td>
    </tr>`}},Zv=({sentence:s,largest_loss_change_db:e,at_hz:t})=>l`<tr>
    <th scope="row">Since the earlier sweep</th>
    <td colspan="2">
      ${s} Largest change of loss ${ru(e)} at ${M(t)}.
    </td>
  </tr>`;customElements.define("jw-sweep-part",ou);var lu=class extends w({result:m(u),of:{type:String},outdated:{type:String}}){static styles=[y,T,b`
      .finding { display: flex; flex-wrap: wrap; gap: var(--space-2) var(--space-3); align-items: baseline; }
      .mark { flex: none; padding: var(--space-half) var(--space-3); }
      #verdict {
        flex: 1 1 280px; font-size: var(--type-lead); font-weight: 650; line-height: 1.35; overflow-wrap: anywhere;
      }
      h2 { margin: var(--space-3) 0 var(--space-half); font-size: var(--type-text); }
      ul { padding-left: 1.2em; font-size: var(--type-text); }
      .outdated {
        padding: var(--space-2) var(--space-3); margin-top: var(--space-2); background: var(--alarm-wash);
        border: 1px solid var(--alarm);
        border-radius: var(--round);
      }
      .quiet { margin-top: var(--space-2); }
    `];render(){let{result:e}=this,{mark:t,words:n}=z2(e);return l`<section class="panel">
      <div class="finding" role="status">
        <span class="sign mark ${t==="!"?"bad":""}">${t} ${n}</span>
        <p id="verdict">${e.verdict}</p>
      </div>
      ${yg("advice","What to do",e.advice)}
      ${yg("assumed","What this assumes",e.line?.assumed??[])}
      <p class="quiet">
        ${this.of}; ${e.points} points from ${M(e.low_hz)} to ${M(e.high_hz)},
        reference ${j(e.reference_ohm)} Ω. ${e.notes.join(" ")}
      </p>
      ${this.outdated?l`<p class="outdated" role="alert">${this.outdated}</p>`:p}
    </section>`}},yg=(s,e,t)=>t.length===0?p:l`<h2>${e}</h2><ul id=${s}>${t.map(n=>l`<li>${n}</li>`)}</ul>`;customElements.define("jw-sweep-verdict",lu);var e9={key:"jointwise-hunt",blocked:"This browser keeps nothing for the page: the hunt begins anew when the page is loaded again.",full:"This browser has no room for the sweep of this hunt: give the file again if the page is loaded anew.",spoilt:"The hunt kept in this browser could not be read, and begins anew."},du=new oe(e9,Y2);var fa=class extends w({loadCharts:m(u),_document:x(u),_file:x(u),_earlier:x(u),_hunt:x(u)},Ze){static view="sweep";static ownNames=["length_tolerance","window_shape","length_m","velocity_factor","lowest_hz","highest_hz","most_points","of","end","way"];static styles=[y,Qe,T,b`
      details.panel { padding-top: var(--space-half); padding-bottom: var(--space-half); }
      summary { cursor: pointer; min-height: var(--target); align-content: center; font-weight: 600; }
      .prompt { display: grid; place-content: center; min-height: 12em; }
      .headline .waiting { min-height: 12em; }
      .headline { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); }
      @media (min-width: 1180px) {
        main { grid-template-rows: auto auto 1fr; }
        .bar { grid-row: 1; }
        jw-sweep-form, jw-sweep-hunt { grid-column: 1; grid-row: 2 / span 2; }
        .headline { grid-column: 2; grid-row: 2; }
        .answer { grid-column: 2; grid-row: 3; }
        .headline:not(:has(*)) { display: none; }
      }
    `];_sweeps=u;constructor(){super(),this._document=ht,this._hunt=G2,this._sweep=this._enquiry("sweep"),this._span=this._enquiry("span"),this._catalogue=this._enquiry("catalogue")}connectedCallback(){super.connectedCallback(),this._recallHunt()}_begin(){super._begin(),this._sweeps=new ve(Nt,V,this.vocabulary.fields,[]),this._sweeps.attach(this,()=>{this._notice({text:"Sweeps kept in another tab are shown here now."}),this.requestUpdate()});let{problem:e,spoilt:t}=this._sweeps,n=()=>K("jointwise-sweeps-unread.txt","text/plain",t);t&&this._notice({text:e,action:{words:"Save them",run:n}})}get _entries(){return this._sweeps.present}get _state(){return super._state}render(){let{error:e}=this._sweep,t=this._result,n=(t??(this._isHunt?this._span.result:void 0))?.cautions,a=!this._isHunt||V2(this._hunt.at),i=a?l`<div class="headline">${this._headline(t,e)}</div>`:p,r=!!t&&!e&&this._sweep.answered===this._request;return l`${this._progress(this._sweep)}
      <main @jw-sweep-change=${({detail:o})=>this._change(o.changes)}
        @jw-sweep-file=${({detail:o})=>this._take(o)} @jw-sweep-forget=${()=>this._earlier=void 0}
        @jw-sweep-hunt=${({detail:o})=>this._walk(o.hunt)}
        @jw-sweep-keep=${({detail:o})=>this._keep(o.date)} @jw-sweep-drop=${({detail:o})=>this._drop(o.entry)}
        @jw-sweep-import=${({detail:o})=>this._remember(o.entries.reduce(Sl,this._entries))}
        @jw-sweep-compare=${({detail:o})=>this._compare(o.entry)}>
        <div class="bar">
          ${this._way("judge","Judge a sweep")} ${this._way("hunt","Find it step by step")}
        </div>
        ${this._isHunt?[this._steps(t,e),i]:[i,this._form(e)]}
        <div class="answer">
          ${a&&t?this._details(t):p}
          <jw-sweep-history .entries=${this._entries} line=${this._line.name} ?keepable=${r}
            .load=${this.loadCharts}></jw-sweep-history>
          ${n?l`<jw-cautions .cautions=${n}></jw-cautions>`:p}
        </div>
      </main>`}_askAnew(){super._askAnew(),this._spanAsked=void 0}get _isHunt(){return this._state.way==="hunt"}_way(e,t){return l`<button id=${e} aria-pressed=${this._state.way===e?"true":"false"}
      @click=${()=>this._change({way:e})}>${t}</button>`}_form(e){return l`<jw-sweep-form class="noprint" .state=${this._state} .document=${this._document} .file=${this._atHand}
      .earlier=${this._earlier} .refusal=${e}></jw-sweep-form>`}_steps(e,t){return l`<jw-sweep-hunt class="noprint" .hunt=${this._hunt} .state=${this._state} .document=${this._document}
      .file=${this._atHand} .span=${this._span.error?void 0:this._span.result} .spanRefusal=${this._span.error}
      .result=${t?void 0:e} .refusal=${t}></jw-sweep-hunt>`}_headline(e,t){if(!this._atHand)return l`<section class="panel prompt"><h2>Give the sweep of ${this._line.name}</h2>
        <p>A one-port file of the whole line, or a two-port file of what the line consists of.</p></section>`;if(!e&&t)return l`<section class="panel prompt" id="refused"><h2>No verdict on ${this._atHand.name}</h2>
        <p>${dn(t,this._atHand.name)}</p></section>`;if(!e)return l`<p class="waiting quiet">Calculating…</p>`;let n=t?`Out of date: this is the answer before the last change. ${t.message}`:"",{before:a}=this._hunt;return l`${this._isHunt&&a&&this._earlier===a.file?l`<jw-sweep-change .before=${a.result} .after=${e} .load=${this.loadCharts}></jw-sweep-change>`:p}
      <jw-sweep-verdict .result=${e} of="${this._line.name}, ${this._atHand.name}"
        outdated=${n}></jw-sweep-verdict>`}_details({line:e,part:t,echoes:n,steps:a}){let i=this.loadCharts;return l`${e?l`<jw-sweep-line .check=${e} .load=${i}></jw-sweep-line>`:p}
      ${t?l`<jw-sweep-part .part=${t} .load=${i}></jw-sweep-part>`:p}
      ${n?l`<jw-sweep-echoes .check=${n} .load=${i}></jw-sweep-echoes>`:p}
      <details class="panel more noprint" id="how">
        <summary>How this was worked out</summary>
        <jw-steps .steps=${a} .catalogue=${this._catalogue.result}></jw-steps>
      </details>`}get _line(){let e=cn(this._state.of,this._document);return tu(this._state.of)?{...e,request:wt(e.request,this.station,this.vocabulary)}:e}get _atHand(){return this._file??this._line.file}get _result(){let{answered:e,result:t}=this._sweep;return this._atHand&&e?.touchstone===this._atHand.text&&e.elements===this._line.request.elements?t:void 0}get _request(){if(!this._atHand)return;let{end:e,length_tolerance:t,window_shape:n,velocity_factor:a}=this._state,r=[...[this._state.of,e,t,n,a],this._document,this.station,this._atHand,this._earlier],o=this._parts;return(!o||r.some((d,c)=>d!==o[c]))&&(this._parts=r,this._made=fg(this._state,this._line,this._atHand,this._earlier)),this._made}_ask(){this._askSpan(),!(this._request===void 0||this._request===this._asked)&&(this._asked=this._request,this._sweep.askNext(this._request),["initial","error"].includes(this._catalogue.status)&&this._catalogue.ask({}))}_askSpan(){if(!this._isHunt)return;let e=gg(this._state,this._line),t=JSON.stringify(e);t!==this._spanAsked&&(this._spanAsked=t,this._span.askNext(e))}_walk(e){e.before||(this._earlier=void 0),this._hunt=e,this._rememberHunt()}_rememberHunt(){let{at:e,before:t}=this._hunt,n=t?.file??this._file??null,a=du.remember(V,{of:this._state.of,at:e,file:n});this._notice(a&&{text:a})}_recallHunt(){let e=du.recalled(V).document;!this._isHunt||!e||e.of!==this._state.of||(this._file=e.file??void 0,this._hunt={at:e.at})}_change(e){"of"in e&&this._forget();let t=Ut(e.of)?{end:this._first.end}:{};super._change({...e,...t},{isStep:!("way"in e)})}turn(e){let{of:t}=this._state,n=super.turn(e);return this._state.of!==t&&this._forget(),n}reset(){this._state.of!==this._first.of&&this._forget(),super.reset()}get ways(){return super.ways.filter(({id:e})=>e!=="link")}_forget(){Object.assign(this,{_file:void 0,_earlier:void 0,_asked:void 0}),this._hunt={at:this._hunt.at},this._sweep.forget()}_take({name:e,file:t}){if(e==="earlier"){this._earlier=t;return}if(e==="again"){let n=this._hunt.before??{file:this._atHand,result:this._result};Object.assign(this,{_file:t,_earlier:n.file,_hunt:{at:"compare",before:n}}),this._rememberHunt();return}Ut(this._state.of)&&this._change({of:_g(this._document.current)}),this._hunt={at:this._hunt.at},this._file=t,this._isHunt&&(this._earlier=void 0,this._rememberHunt())}_compare({name:e,date:t,text:n}){this._earlier={name:`${e}, ${t}`,text:n}}_drop(e){this._remember(this._entries.filter(t=>t!==e))}_keep(e){let t=Wm({date:e,line:this._line.name,file:this._atHand,result:this._result});this._remember(Sl(this._entries,t))}_remember(e){this._sweeps.put(e);let{problem:t}=this._sweeps;this._notice(t&&{text:t}),this.requestUpdate()}_restore(e){let{of:t}=this._state;this._document=Fe.recalled(V,this.vocabulary.fields).document??ht;let n=super._restore(e);return this._state.of!==t&&this._forget(),n}};customElements.define("jw-sweep-view",fa);var vg=()=>({"sweep.end":{label:"The line ended in",options:{short:"a short",open:"nothing (open)",matched:"a matched load",antenna:"the antenna of the line"}},"sweep.length_tolerance":{label:"Lengths are right within",factor:.01,unit:"%"},"sweep.window_shape":{label:"Window shape",step:.5},"sweep.length_m":{label:"About how long",unit:"m"},"sweep.velocity_factor":{label:"Velocity factor of the cable",unit:""},"sweep.lowest_hz":{label:"Analyser from",factor:1e6,unit:"MHz"},"sweep.highest_hz":{label:"Analyser up to",factor:1e6,unit:"MHz"},"sweep.most_points":{label:"Points at most",unit:""}});var $g={id:fa.view,label:"Sweep",description:"Which joint has gone bad, from a sweep of your antenna analyser.",fields:L2,words:vg,upright:!0,element:({transport:s,stage:e,loadCharts:t})=>l`<jw-sweep-view class="view" .transport=${s} .stage=${e}
      .loadCharts=${t}></jw-sweep-view>`};var ga=[X1,_m,b1,t0,vf,$g],un=N2;var cu=matchMedia("(prefers-color-scheme: dark)"),xg="jointwise-theme",t9={metric:{label:"Metric",title:"Metres, millimetres, °C, N·m"},us:{label:"US",title:"Feet, inches, °F, in-lb"}};function s9(){try{return localStorage.getItem(xg)??void 0}catch{return}}var uu=class extends w({view:{type:String},description:{type:String},ways:m(u),resets:m(u),undo:{type:Boolean},redo:{type:Boolean},file:{type:String},packs:{type:Number},open:{type:Boolean},station:{type:String},units:{type:String},_theme:x(u)}){static styles=[y,b`
      header {
        display: flex; flex-wrap: wrap; gap: 0 var(--space-4); align-items: center;
        padding: var(--space-2) var(--space-4) 0; background: var(--card); border-bottom: 1px solid var(--line);
      }
      svg { width: 34px; height: 34px; flex: none; }
      h1 { margin: 0; font-size: var(--type-title); letter-spacing: -0.02em; line-height: 1; }
      nav { display: flex; }
      nav button { margin-left: -1px; border-radius: 0; font-weight: 600; }
      nav button:first-child { margin-left: 0; border-radius: var(--round) 0 0 var(--round); }
      nav button:last-child { border-radius: 0 var(--round) var(--round) 0; }
      .switches { display: flex; gap: var(--space-2); margin-left: auto; }
      .about { flex: 1 0 100%; display: flex; gap: var(--space-3); align-items: center; min-height: 44px; }
      .about p { flex: 1; color: var(--soft); line-height: 1.3; text-wrap: pretty; }
      @media (max-width: 940px) { nav { order: 1; } .about { order: 2; } }
      @media (max-width: 640px) {
        header { padding: var(--space-1) var(--space-2) 0 var(--space-3); gap: 0 var(--space-2); }
        h1 { font-size: var(--type-lead); }
        svg { display: none; }
        .switches { gap: var(--space-1); }
        .about p { font-size: var(--type-small); }
        nav { flex: 1 0 100%; overflow-x: auto; }
        nav button { flex: 1 0 auto; min-width: 0; padding: 0 var(--space-half); font-size: var(--type-fine); }
      }
      /* a phone: in the thumb's reach */
      @media (max-width: 640px) and (min-height: 480px) {
        nav {
          position: fixed; inset: auto 0 0; z-index: 15; height: var(--foot); background: var(--card);
          border-top: 1px solid var(--edge);
        }
        nav button, nav button:is(:first-child, :last-child) { height: 100%; border: 0; border-radius: 0; }
        nav button:focus-visible { outline-offset: -3px; }
      }
      @media print {
        header { padding: 0 0 2mm; border: 0; }
        nav, .switches, jw-undo { display: none; }
        .about { min-height: 0; }
      }
    `];constructor(){super(),this.station="",this.description="",this.file="",this._turned=()=>this.requestUpdate(),this._moved=()=>this._tellEnd(),this._theme=s9()}connectedCallback(){super.connectedCallback(),cu.addEventListener("change",this._turned),window.addEventListener("scroll",this._moved,{passive:!0}),this._sizes=new ResizeObserver(this._moved),this._sizes.observe(this)}disconnectedCallback(){super.disconnectedCallback(),cu.removeEventListener("change",this._turned),window.removeEventListener("scroll",this._moved),this._sizes?.disconnect()}_tellEnd(){let e=`${Math.max(0,Math.round(this.getBoundingClientRect().bottom))}px`;e!==this._end&&(this._end=e,document.documentElement.style.setProperty("--masthead-end",e))}willUpdate(){this._theme&&(document.documentElement.dataset.theme=this._theme)}render(){return l`<header>
      <svg viewBox="0 0 32 32" aria-hidden="true">
        <circle cx="16" cy="16" r="15" fill="#1f5690"></circle>
        <circle cx="16" cy="16" r="11" fill="#f8e8c8"></circle>
        <circle cx="16" cy="16" r="4.8" fill="#bf8031"></circle>
      </svg>
      <h1>Jointwise</h1>
      <nav aria-label="Views">
        ${ga.map(({id:e,label:t})=>l`<button data-view=${e} aria-current=${e===this.view?"page":p}
              @click=${()=>$(this,"jw-view",{view:e})}>${t}</button>`)}
      </nav>
      <div class="switches">
        <button id="station" aria-expanded=${this.open} title=${this.station||p}
          @click=${()=>$(this,"jw-sheet",{name:"station"})}>Station</button>
        <jw-menu id="share" label="Share" rest="and save" .content=${()=>this._share()}></jw-menu>
        <jw-menu id="more" label="More" .content=${()=>this._more()}></jw-menu>
      </div>
      <div class="about">
        <p>${this.description}</p>
        <jw-undo ?undo=${this.undo} ?redo=${this.redo}></jw-undo>
      </div>
    </header>`}_share(){let e=this.ways();return l`${e.length>0?l`<h2>What this view shows</h2>${e.map(Wp)}`:p}
      <h2>All that is yours</h2>
      <button id="saving" class="quiet" @click=${()=>$(this,"jw-sheet",{name:"saving"})}
        >Save or open my page…</button>
      ${this.file?l`<h2>Without a network</h2>
            <a id="offline" class="quiet button" href=${this.file} download="jointwise.html">Save for offline use</a>`:p}`}_more(){let e=this.packs>0?l` <b>${this.packs}</b><span class="unseen"> in use</span>`:p,t=this.resets();return l`<button id="methods" class="quiet" @click=${()=>$(this,"jw-methods")}>Method</button>
      <button id="packs" class="quiet" aria-current=${this.view===un.id?"page":p}
        @click=${()=>$(this,"jw-view",{view:un.id})}>Packs${e}</button>
      ${t?l`<button id="reset" class="quiet" @click=${()=>$(this,"jw-reset")}>Reset</button>`:p}
      <h2 id="units">Units</h2>
      <div class="row" role="group" aria-labelledby="units">
        ${Object.entries(t9).map(([n,a])=>l`<button id=${n} aria-pressed=${n===this.units} title=${a.title}
              @click=${()=>$(this,"jw-units",{units:n})}>${a.label}</button>`)}
      </div>
      <h2>Colours</h2>
      <div class="row"><button id="theme" aria-pressed=${this._dark} @click=${this._turn}>Dark</button></div>`}get _dark(){return this._theme?this._theme==="dark":cu.matches}_turn=()=>{this._theme=this._dark?"light":"dark";try{localStorage.setItem(xg,this._theme)}catch{$(this,"jw-notice",{text:"This browser keeps nothing for the page, so the choice of light or dark ends when it is closed."})}}};customElements.define("jw-masthead",uu);var hu=class extends w({text:{type:String},link:{type:String},action:m(u)}){static styles=[y,b`
      :host {
        position: fixed; inset: auto var(--space-3) calc(var(--foot) + var(--space-3)); z-index: 30; max-width: 640px;
        margin: 0 auto;
      }
      div {
        box-shadow: 0 6px 30px #0004;
        display: flex; flex-wrap: wrap; gap: var(--space-2) var(--space-3); align-items: center;
        padding: var(--space-1) var(--space-1) var(--space-1) var(--space-4);
        background: var(--card); border: 1px solid var(--edge); border-radius: var(--round);
      }
      p { flex: 1 1 14rem; }
      input { flex: 2 1 14rem; }
      @media print { :host { display: none; } }
    `];constructor(){super(),this.text="",this.link=""}render(){return this.text?l`<div role="status">
      <p>${this.text}</p>
      ${this.link?l`<input readonly aria-label="Link to this view" .value=${this.link} @focus=${e=>e.target.select()}>`:p}
      ${this.action?l`<button id="notice-action" @click=${this.action.run}>${this.action.words}</button>`:p}
      <button @click=${this._dismiss}>Close</button>
    </div>`:l`<span role="status"></span>`}_dismiss(){this.dispatchEvent(new CustomEvent("jw-dismiss",{bubbles:!0,composed:!0}))}};customElements.define("jw-notice",hu);var n9={interfaces:()=>!0,cables:()=>!0,bands:({regions:s})=>Object.keys(s).length>0,modes:({duty_factor:{value:s}})=>Number.isFinite(s)},zr=s=>typeof s=="string";function hn(s){let e=JSON.parse(s),t=Object.entries(n9).every(([n,a])=>(e[n]??[]).every(i=>zr(i.id)&&zr(i.name)&&a(i)));if(!zr(e.id)||!zr(e.name)||!t)throw new TypeError("no pack");return{text:s,id:e.id,name:e.name}}var a9={key:"jointwise-packs",blocked:"This browser keeps nothing for the page: your packs end when it is closed. Keep their files.",full:"This browser has no room for all of your packs: they end when the page is closed. Keep their files.",spoilt:"The packs kept in this browser could not be read and were set aside. Save them as a file to look for what is left."},vt=new oe(a9,({own:s,server:e})=>({own:s.map(({text:t,on:n,refused:a})=>({...hn(t),on:n===!0,refused:String(a??"")})),server:e.map(({text:t})=>hn(t))}),({base:s,mine:e,theirs:t})=>({own:Ee({base:s.own,mine:e.own,theirs:t.own},({id:n})=>n),server:e.server})),Pr=class{server=[];own=[];problem="";spoilt;#e;#t;#s=new Set;constructor(e){this.#e=e;let{document:t,problem:n,spoilt:a}=vt.recalled(e);Object.assign(this,t,{problem:n,spoilt:a}),this.#t={own:this.own,server:this.server}}follow(){vt.listen(()=>{let e=JSON.stringify(this.own);this.#a(),JSON.stringify(this.own)!==e&&this.#i()})}listen(e){return this.#s.add(e),()=>this.#s.delete(e)}get inForce(){return[...this.server,...this.own.filter(({on:e})=>e)]}get hasOwn(){return this.own.some(({on:e})=>e)}with(e,t){let n;try{({id:n}=hn(e))}catch{}return[...pu(this.inForce.filter(a=>a.id!==n||this.server.includes(a))),{label:t,text:e}]}put(e){let t={...hn(e),on:!0,refused:""},n=this.own.findIndex(({id:a})=>a===t.id);this.own=n===-1?[...this.own,t]:this.own.with(n,t),this.#n()}turn(e,t,n=""){this.own=this.own.map(a=>a.id===e.id?{...a,on:t,refused:n}:a),this.#n()}bringBack(e,t){this.own=Ee({base:e,mine:t,theirs:this.own},({id:n})=>n),this.#n()}remove(e){this.own=this.own.filter(({id:t})=>t!==e.id),this.#n()}takeServer(e){let t=e.map(hn);JSON.stringify(t)!==JSON.stringify(this.server)&&(this.server=t,this.#n())}#a(){let{document:e}=vt.recalled(this.#e);if(e===void 0)return;let{own:t,server:n}=vt.merged({base:this.#t,mine:{own:this.own,server:this.server},theirs:e});Object.assign(this,{own:t,server:n}),this.#t=e}#n(){this.#a();let e={own:this.own,server:this.server};this.problem=vt.remember(this.#e,e),this.problem===""&&(this.#t=e),this.#i()}#i(){for(let e of this.#s)e()}},pu=s=>s.map(({name:e,text:t})=>({label:e,text:t}));var i9=["station","lines","kit","packs","sweeps","joints","checklist"],r9="jointwise-",Ir="jointwise station",Wr=1,o9=/<script type="application\/json" id="carried">([\s\S]*?)<\/script>/;function Br(s){let e;try{e=JSON.parse(o9.exec(s)?.[1]??s)}catch{throw new RangeError("The file is neither a station file nor a page saved here.")}if(e===null)throw new RangeError("This page was saved without a station in it.");e.format!==Ir&&P("format",e.format,`"${Ir}"`),e.version!==Wr&&P("version",e.version,`${Wr}; this page is older than the file`);let{name:t,date:n,kept:a}=e;return U("kept",a),{format:Ir,version:Wr,name:Q("name",t,60),date:Q("date",n,10),kept:a}}function kg({kept:{packs:s}}){try{return vt.checked(s).own}catch{return[]}}function Sg(s,e){let t=JSON.stringify(s,null,1);return e?`${t.slice(0,-2)},
 "snapshot": ${JSON.stringify(e)}
}`:t}function Hr(s){let e=s.getElementById("carried");return e?JSON.parse(e.textContent??"null"):null}function Ur(s,e,t,n){let a=i9.map(d=>[d,JSON.parse(s.getItem(r9+d)??"null")]),i=Object.fromEntries(a.filter(([,d])=>d!==null)),r={format:Ir,version:Wr,name:e,date:t,kept:i};return n&&JSON.stringify({...r,date:n.date})===JSON.stringify(n)?n:r}function jg(s,e,t,{kept:n},a=[]){let r=Object.entries(n).filter(([c])=>c in s).map(([c,h])=>({key:c,theirs:l9(s[c].kept,c,h,t)})),o=[],d="";for(let{key:c,theirs:h}of r){let{kept:f,nothing:_}=s[c],{document:g}=f.recalled(e,t),v=JSON.stringify(g)===JSON.stringify(h);if(g===void 0||a.includes(c))d||=f.remember(e,h);else{if(v)continue;_===void 0?o.push(c):d||=f.remember(e,f.merged({base:_,mine:g,theirs:h}))}}return{asks:o,problem:d}}function l9(s,e,t,n){try{return s.checked(t,n)}catch(a){throw a instanceof RangeError?a:new RangeError(`The ${e} of the file can’t be read.`,{cause:a})}}var d9="JW1",Tg=/^JW1:(\d{1,2}):(\d{1,2}):([0-9A-F]{8}):([0-9A-Z $%*+\-./:]+)$/,c9=8,mu=12,Eg=945,Og=1e6,u9="sweeps",Ag="0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:",gu=45,pn=256;function h9(s){let e="";for(let t=0;t<s.length;t+=2){let n=t+1<s.length,a=n?s[t]*pn+s[t+1]:s[t];for(let i=n?3:2;i>0;i--)e+=Ag[a%gu],a=Math.floor(a/gu)}return e}function p9(s){let e=[];for(let t=0;t<s.length;t+=3){let n=[...s.slice(t,t+3)].map(r=>Ag.indexOf(r)),a=n.reduceRight((r,o)=>r*gu+o,0),i=n.length===3;if(n.length===1||n.includes(-1)||a>=(i?pn*pn:pn))throw new RangeError("A code holds what no page wrote.");e.push(...i?[Math.floor(a/pn),a%pn]:[a])}return Uint8Array.from(e)}async function Mg(s,e){let t=e.writable.getWriter();t.write(s).then(()=>t.close()).catch(()=>{});let n=e.readable.getReader(),a=[],i=0;for(;;){let{done:o,value:d}=await n.read();if(o)break;if(i+=d.length,i>Og)throw await n.cancel(),new RangeError(`The codes unpack to more than ${Og/1e6} MB, which no page wrote.`);a.push(d)}let r=new Uint8Array(i);return a.reduce((o,d)=>(r.set(d,o),o+d.length),0),r}var qg=s=>Za(Cs(s)).slice(0,c9).toUpperCase(),fu=s=>`${(s/1e3).toFixed(1)} kB`;async function Cg(s){let e=Object.fromEntries(Object.entries(s.kept).filter(([c])=>c!==u9)),t=ei(JSON.stringify({...s,kept:e})),n=await Mg(t,new CompressionStream("deflate-raw")),a=h9(n),i=Math.ceil(a.length/Eg);if(i>mu){let c=Math.floor(mu*Eg*2/3),h=Object.entries(e).map(([_,g])=>[_,JSON.stringify(g).length]);h.sort(([,_],[,g])=>Number(g)-Number(_));let f=h.slice(0,2).map(([_,g])=>`${_} ${fu(Number(g))}`);throw new RangeError(`This station is too big for a sheet of codes: packed it takes ${fu(n.length)}, and ${mu} codes hold ${fu(c)}. Most of it before packing: ${f.join(", ")}. Save it as a station file instead.`)}let r=Math.ceil(a.length/i),o=qg(n),d=c=>`${d9}:${c+1}:${i}:${o}:${a.slice(c*r,(c+1)*r)}`;return Array.from({length:i},(c,h)=>d(h))}function Rg(s){let e=new Map;for(let o of s){let[,d,c,h]=Tg.exec(o)??[];if(!d||Number(d)<1||Number(d)>Number(c))continue;let f=`${c}:${h}`;e.set(f,(e.get(f)??new Map).set(Number(d),o))}let t=[...e.entries()].sort(([,o],[,d])=>d.size-o.size)[0];if(!t)return{total:0,missing:[],isMixed:!1,texts:[]};let[n,a]=t,i=Number(n.split(":")[0]),r=Array.from({length:i},(o,d)=>d+1);return{total:i,missing:r.filter(o=>!a.has(o)),isMixed:e.size>1,texts:r.filter(o=>a.has(o)).map(o=>a.get(o))}}async function Ng(s){let e=s.map(a=>Tg.exec(a)),t=p9(e.map(([,,,,a])=>a).join(""));if(qg(t)!==e[0][3])throw new RangeError("The codes do not fit together: the check of the whole fails.");let n;try{n=await Mg(t,new DecompressionStream("deflate-raw"))}catch(a){throw a instanceof RangeError?a:new RangeError("The codes hold what no page wrote.",{cause:a})}return Br(new TextDecoder().decode(n))}var m9=s=>s.map(({text:e})=>e),f9=s=>[...new Set(s)],Fr=(s,e)=>e.length>0?[{heading:s,items:e}]:[];function g9(s){let e=new Map;for(let{family_name:t}of s)e.set(t,(e.get(t)??0)+1);return[...e].map(([t,n])=>({id:`spare/${t}`,words:`Spare plug and jack of ${t}, for ${n===1?"one joint":`${n} joints`}`}))}function b9({label:s,sealing:e,torque:t},n){let a=(r,o)=>({id:`joint/${n}/${r}`,words:`${s.name}, ${s.family}: ${o}`}),i=e.layers.map(({name:r})=>r).join(", ");return[a("looked","looked at, clean and dry"),...t.tightened?[a("tightened",`tightened, ${t.figures}`)]:[],...i?[a("sealed",`sealed with ${i}`)]:[]]}function _9({name:s,sheets:{measurement:e}}){let{frequency_hz:t,least_return_loss_db:n}=e;if(n===null)return[];let a=`Measured with a good load: return loss ${n.toFixed(0)} dB or more at ${M(t)}`;return[{id:`line/${s}/measured`,words:a}]}function Dr(s,e){let t=s.flatMap(r=>r.sheets.joints),n=(e?.adapters??[]).map(({name:r,count:o})=>({id:`adapter/${r}`,words:`${o} × ${r}`})),a=f9(t.flatMap(r=>m9(r.tools))).map(r=>({id:`tool/${r}`,words:r})),i=s.flatMap(r=>{let o=ze(r),d=r.sheets.joints.flatMap((c,h)=>b9(c,o[h].code));return Fr(r.name,[...d,..._9(r)])});return{pack:[...Fr("Adapters",n),...Fr("Tools",a),...Fr("Spares",g9(t))],arrival:i}}var Ft={ticked:[]},w9=5e3,y9=400,v9={key:"jointwise-checklist",blocked:"This browser keeps nothing for the page: the ticks of the checklist end when it is closed.",full:"This browser has no room for the ticks of the checklist: the last one is not kept.",spoilt:"The ticks of the checklist could not be read and were set aside."};function $9(s){let e=X("ticked",U("checklist",s).ticked,0,w9,"boxes");return{ticked:[...new Set(e.map((t,n)=>Q(`ticked[${n}]`,t,y9)))]}}var Lg=({ticked:s},e,t)=>({ticked:t?[...new Set([...s,e])]:s.filter(n=>n!==e)}),mn=new oe(v9,$9,({base:s,mine:e,theirs:t})=>({ticked:Ee({base:s.ticked,mine:e.ticked,theirs:t.ticked},n=>n)}));var bu=class extends w({asked:m(u),of:{type:String},_answered:x(u),_before:x(u)}){static styles=[y,b`
      :host { max-width: 60rem; }
      h3 { margin: var(--space-3) 0 var(--space-1); }
      ul { padding: 0; list-style: none; }
      li { break-inside: avoid; }
      label { display: flex; gap: var(--space-2); align-items: center; min-height: var(--target); }
      input { flex: none; width: 20px; height: 20px; margin: 0; }
      .row { display: flex; flex-wrap: wrap; gap: var(--space-2); align-items: center; margin-bottom: var(--space-2); }
      @media print {
        :host { max-width: none; }
        .row { display: none; }
        .lists { columns: 2; column-gap: 6mm; }
        .group { break-inside: auto; }
        h3 { margin: 2mm 0 0.5mm; font-size: var(--type-text); break-after: avoid; }
        h4 { font-size: var(--type-text); break-after: avoid; }
        label { min-height: 0; gap: 1.5mm; font-size: var(--type-small); line-height: 1.3; align-items: start; }
        input { width: 3mm; height: 3mm; margin-top: 0.3mm; }
      }
    `];constructor(){super(),this.of="",this._ticks=new ve(mn,V,{},Ft),this._ticks.attach(this,()=>this.requestUpdate())}firstUpdated(){this.asked.then(e=>this._answered=e)}render(){if(!this._answered)return l`<p class="quiet" role="status">Calculating…</p>`;let{list:e,refused:t}=this._answered,{ticked:n}=this._ticks.present;return l`<p class="quiet">${this.of}</p>
      <div class="row">
        <button id="clear" ?disabled=${n.length===0} @click=${this._clear}>Clear all ticks</button>
        ${this._before?l`<button id="undo" @click=${this._undo}>Undo</button>`:p}
        <span class="quiet" role="status">${n.length} ticked. Ticks stay on this device.</span>
      </div>
      ${this._ticks.problem?l`<p class="error" role="alert">${this._ticks.problem}</p>`:p}
      ${t.map(a=>l`<p class="error">${a}</p>`)}
      <div class="lists">
        ${this._part("To pack",e.pack)} ${this._part("On arrival, before power",e.arrival)}
      </div>`}_part(e,t){if(t.length===0)return p;let n=new Set(this._ticks.present.ticked);return l`<h3>${e}</h3>
      ${t.map(a=>l`<div class="group" role="group" aria-label=${a.heading}><h4>${a.heading}</h4>
          <ul>${a.items.map(i=>l`<li>${this._box(i,n.has(i.id))}</li>`)}</ul></div>`)}`}_box({id:e,words:t},n){return l`<label><input type="checkbox" .checked=${n} @change=${({target:i})=>this._put(Lg(this._ticks.present,e,i.checked))}>${t}</label>`}_clear(){let e=this._ticks.present;this._put(Ft),this._before=e}_undo(){this._put(this._ticks.turned(Ft,this._before))}_put(e){this._before=void 0,this._ticks.put(e),this.requestUpdate()}};customElements.define("jw-checklist",bu);var x9=4,_u=class extends w({texts:m(u),of:{type:String}}){static styles=[y,b`
      .codes {
        display: grid; grid-template-columns: repeat(auto-fill, minmax(min(100%, 260px), 1fr)); gap: var(--space-4);
      }
      figure { padding: var(--space-2); color: #000; background: #fff; break-inside: avoid; }
      figcaption { text-align: center; font-size: var(--type-small); }
      svg { display: block; width: 100%; height: auto; }
      @media print {
        .codes { grid-template-columns: repeat(3, 51mm); gap: 3mm 10mm; margin-top: 2mm; }
        .codes[data-few] { grid-template-columns: repeat(2, 86mm); }
        figure { padding: 0; }
        figcaption { font-size: var(--type-small); }
        p { font-size: var(--type-text); }
      }
    `];constructor(){super(),this.of=""}render(){let e=this.texts.length;return l`<p>${this.of}. ${e===1?"One code holds":`${e} codes together hold`} this station. Take a
        picture of ${e===1?"it":"them"}, and open it in Jointwise: Share and save, Save or open my page.</p>
      <div class="codes" ?data-few=${e<=x9}>
        ${this.texts.map((t,n)=>this._code(t,n+1,e))}
      </div>`}_code(e,t,n){let{size:a,path:i}=Fi(e);return l`<figure>
      <svg viewBox="0 0 ${a} ${a}" role="img" aria-label="Code ${t} of ${n}"
        shape-rendering="crispEdges">
        ${Y`<rect width=${a} height=${a} fill="#fff"></rect><path d=${i} fill="#000"></path>`}
      </svg>
      <figcaption>${t} of ${n}</figcaption>
    </figure>`}};customElements.define("jw-codes",_u);var zg=["beforeprint","afterprint"],wu=class extends w({heading:{type:String}}){static styles=[y,b`
      dialog {
        position: fixed; inset: 0; width: 100vw; height: 100dvh; max-width: none; max-height: none; margin: 0;
        padding: 0; border: 0; overflow: auto; color: var(--ink); background: var(--paper);
      }
      .head {
        display: flex; flex-wrap: wrap; gap: var(--space-2); align-items: center;
        padding: var(--space-2) var(--space-4); background: var(--card);
        border-bottom: 1px solid var(--line);
      }
      h2 { flex: 1; font-size: var(--type-lead); }
      h2:focus { outline: none; }
      .body { padding: var(--space-3) var(--space-4) var(--space-10); }
      @media print {
        :host { page: upright; }
        dialog { position: static; width: auto; height: auto; overflow: visible; }
        .head { padding: 0; border: 0; }
        .head button { display: none; }
        h2 { font-size: var(--type-title); }
        .body { padding: 0; }
      }
    `];constructor(){super(),this.heading="",this._pressed=e=>{e.key==="Escape"&&(e.preventDefault(),e.stopImmediatePropagation(),this._close())},this._printed=({type:e})=>this._place(e==="beforeprint")}connectedCallback(){super.connectedCallback(),window.addEventListener("keydown",this._pressed,{capture:!0});for(let e of zg)window.addEventListener(e,this._printed)}disconnectedCallback(){super.disconnectedCallback(),window.removeEventListener("keydown",this._pressed,{capture:!0});for(let e of zg)window.removeEventListener(e,this._printed)}render(){return l`<dialog aria-labelledby="heading" @cancel=${this._close}>
      <div class="head">
        <h2 id="heading" tabindex="-1">${this.heading}</h2>
        <button id="print" @click=${()=>window.print()}>Print</button>
        <button id="close" @click=${this._close}>Close</button>
      </div>
      <div class="body"><slot></slot></div>
    </dialog>`}firstUpdated(){this._place(!1),N(this.renderRoot,"h2").focus()}get _dialog(){return N(this.renderRoot,"dialog")}_place(e){this._dialog.open&&this._dialog.close(),e?this._dialog.show():this._dialog.showModal()}_close(){this._dialog.close(),this.remove()}};customElements.define("jw-paper",wu);function yu(s,e){let t=document.createElement("jw-paper");t.heading=s,t.append(e),document.body.append(t)}var Gr=({transport:s,refused:e},t,n,a)=>s.ask(n,a).catch(({message:i})=>(e.push(`${t}: ${i}`),null));async function vu(s,e){let{document:{lines:t}=ht}=Fe.recalled(s.storage,e.fields),n=[];for(let{name:a,request:i}of t){if(i.elements.length===0)continue;let r=wt(i,s.station,e),o=Ii({station:s.station.name,date:""},r),d=await Gr(s,`${a}, fitting`,"fitout",o);d&&n.push({name:a,request:r,sheets:d})}return n}async function $u(s,e){let{document:t=Jn}=Ks.recalled(s.storage,e.fields),n=await Gr(s,"Kit","kit",Vi(Gs(t),s.station,e));return n&&{ports:Fs(e.lists.families,t.ports),answer:n}}async function Pg(s,e,t,n,{name:a,date:i}){let r={transport:s,storage:e,station:t,refused:[]},{first:o}=n,d=An({},t,o.matrix),c=await Gr(r,"Matrix","matrix",Ie({...d,powers_w:[d.power_w]},n)),h=[];for(let _ of await vu(r,n)){let g=await Gr(r,_.name,"line",_.request);g&&h.push({..._,line:g})}let f=_=>n.spoken(_,d[_]);return{name:a,date:i,words:[f("mode"),`SWR ${f("vswr")}`,f("ambient_temperature_c"),f("exposure")].join(", "),heading:`Margins at ${n.spoken("power_w",d.power_w)}`,matrix:c,lines:h,kit:await $u(r,n),book:Ws.recalled(e).document??gt,sweeps:Nt.recalled(e).document??[],ticked:(mn.recalled(e).document??Ft).ticked,refused:r.refused,cautions:H.cautions}}function Ig(s,e,t){let{power_w:n,powers_w:a,...i}=An({},e,t.first.matrix),r=Ie({...i,powers_w:_e(a,n)},t);return s.ask("snapshot",{...r,power_w:n})}var xu=class extends w({transport:m(u)},me){static styles=[y,T,b`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); margin-top: var(--space-3); }
      .panel { display: grid; gap: var(--space-2); justify-items: start; background: none; }
      h2 { margin-bottom: 0; }
      .row { display: flex; flex-wrap: wrap; gap: var(--space-2); }
    `];render(){return l`<section class="panel">
      <h2>On paper</h2>
      <p class="quiet">The checklist says what to pack for your lines and kit, and what to do on arrival, with boxes to
        tick here or on one printed sheet. A small station fits on a sheet of QR codes, without its sweeps; a picture of
        the sheet brings it back.</p>
      <div class="row">
        <button id="checklist" @click=${this._checklist}>Checklist</button>
        <button id="codes" @click=${this._codes}>Station as codes</button>
      </div>
    </section>`}get _subject(){return[this.station.name,Ae()].filter(Boolean).join(", ")}async _codes(){try{let e=Ur(V(),this.station.name,Ae(),Hr(document)),t=await Cg(e);yu("Station as codes",Object.assign(document.createElement("jw-codes"),{texts:t,of:this._subject}))}catch(e){$(this,"jw-notice",{text:e instanceof RangeError?e.message:"This browser keeps nothing for the page, so there is nothing to put into codes."})}}_checklist(){let e=Object.assign(document.createElement("jw-checklist"),{asked:this._asked(),of:this._subject});yu("Checklist",e)}async _asked(){let e=[],t={transport:this.transport,storage:V,station:this.station,refused:e},n=await vu(t,this.vocabulary),a=await $u(t,this.vocabulary);return{list:Dr(n,a?.answer),refused:e}}};customElements.define("jw-on-paper",xu);var Wg=`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
{{policy}}
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta name="description" content="How much power each coaxial connector takes on each band, with the working of every number.">
<title>{{title}}</title>
{{head}}
</head>
<body>
<jw-app>{{tables}}</jw-app>
{{carried}}
{{code}}
{{payload}}
<footer class="licences">
<p>Jointwise {{version}}, © 2026 the Jointwise developers, is free software under the MIT licence. This page holds Pyodide (MPL 2.0),
Python (PSF licence), NumPy, msgspec and Lit (BSD licences), culori, noble-hashes, plotly.js and qr (MIT licences).</p>
{{licences}}
</footer>
</body>
</html>
`;var S9=Symbol.for("jointwise text"),Bg=s=>s[S9]??s.value;var Hg=`<details id="licences">
  <summary>Licences</summary>
  <pre>They lie packed in this page; with scripts on they are unpacked here.</pre>
</details>
`;var J=s=>String(s).replaceAll("&","&amp;").replaceAll("<","&lt;").replaceAll(">","&gt;").replaceAll('"',"&quot;"),Ug=s=>`<td data-step=${He(s)}>${J(ft(s))}`;function fn(s,e,t){let n=e.map(i=>`<th scope=col>${J(i)}`).join(""),a=t.map(([i,...r])=>`<tr><th scope=row>${J(i)}${r.map(o=>`<td>${J(o)}`).join("")}`);return`<div class=scroll><table class=plain><caption>${J(s)}</caption><thead><tr>${n}<tbody>${a.join("")}</table></div>`}var Dt=s=>`<ul>${s.map(e=>`<li>${J(e)}`).join("")}</ul>`;var E9=/\{\{([a-z_]+)\}\}/,O9=s=>JSON.stringify(s).replaceAll("<","\\u003c"),T9=s=>[`<data id="${s.id}" hidden value="`,Bg(s),'"></data>'];function Fg(s,{title:e,tables:t,carried:n}){let a=c=>s.querySelector(c),i=c=>a(c).textContent,r=[...s.querySelectorAll('data[id^="part-"]')].flatMap(c=>[`
`,...T9(c)]),o={policy:`<meta http-equiv="Content-Security-Policy" content="${a("[http-equiv]").getAttribute("content")}">`,title:J(e),head:`<link rel="icon" href="${a("link[rel=icon]").getAttribute("href")}">
<style>${i("style")}</style>`,tables:t,carried:`<script type="application/json" id="carried">${O9(n)}<\/script>`,code:`<script type="application/json" id="payload">${i("#payload")}<\/script>
<script>${i("body > script:not([type])")}<\/script>`,payload:r.slice(1),version:H.version,licences:Hg.trimEnd()},d=Wg.split(E9).map((c,h)=>h%2?o[c]:c);return new Blob(d.flat(),{type:"text/html"})}var A9="<p>A margin is the power a joint takes over the power asked for, in dB, by the most cautious figures. RL 26: on receive, return loss 26 dB, enough. A refused cell says why: RL 8, return loss 8 dB, less than asked for; freq, no published figure so high; TE11, above the cutoff; rx only; hot; wet. What a number leaves open is listed under its table.</p>";function Dg(){return`<section><h2>Reading the tables</h2>${`<table class="plain key"><caption>Margin, dB</caption><tr>${Ne.map(({id:t,words:n})=>`<td data-step=${t}><b>${n}</b> ${vi(t)}</td>`).join("")}</tr></table>`}${A9}</section>`}function M9(s){let{families:e,columns:t}=s,n=new Map;for(let[i,{name:r}]of e.entries()){let o=new Map;for(let[d,c]of t.entries())for(let[,h]of ls($e(s,i,d,0)))o.set(h,[...o.get(h)??[],c.name]);for(let[d,c]of o){let h=c.length===t.length?"all bands":c.join(", ");n.set(d,[...n.get(d)??[],`${r} on ${h}`])}}if(n.size===0)return"";let a=[...n].map(([i,r])=>`${i}: ${r.join("; ")}`);return`<details><summary>What to know beside the numbers</summary>${Dt(a)}</details>`}function Gg({heading:s,words:e,matrix:t}){let n=t.columns.map(({name:r})=>`<th scope=col>${J(r)}`).join(""),a=r=>t.columns.map((o,d)=>Ug($e(t,r,d,0))).join(""),i=t.families.map(({name:r},o)=>`<tr><th scope=row>${J(r)}${a(o)}`).join("");return`<section><h2>${J(s)}</h2><p>${J(e)}</p><div class=scroll><table class=plain><caption>Margin in dB, ${J(s)}</caption><thead><tr><th scope=col>Connector${n}<tbody>${i}</table></div>${M9(t)}</section>`}var Kg=s=>`<section><h2>Before you work on it</h2>${Dt(s)}</section>`;var Vr="☐ ",q9="☑ ",Yr="–",Kr=(s,e)=>s==null?Yr:e(s),ku=s=>`${s.toFixed(2)} dB`,C9=({name:s,date:e,words:t})=>`<h1>${J(s||"My station")}</h1><p>${J(e)}. ${J(t)}</p><p>Tables of this station as it was saved; with scripts on, the live page stands here.</p>`;function R9(s,e){let t=s.refusal||Kr(s.margin_db,i=>`${A(i)} dB`),n=s.binding?Ps[s.binding]??"Rated power":Yr,a=Kr(s.largest_power_w,i=>C(Be(i,3)));return[`${e+1} ${s.name}`,t,n,a,Kr(s.loss_db,ku)]}function N9({name:s,line:e}){let t=["Part","Margin","Limited by","Largest safe power","Loss"],n=`At ${M(e.frequency_hz)} with ${C(e.power_w)}`;return`<section><h2>Line: ${J(s)}</h2><p>${J(e.verdict)}</p><p>${J(n)}: loss ${ku(e.loss_db)}, SWR at the transmitter ${e.input.vswr.toFixed(2)}.</p>${fn(`Parts of ${s}, from the transmitter`,t,e.parts.map(R9))}</section>`}var Vg=s=>s.map(({text:e})=>e),L9=s=>s.slice(0,16).replace("T"," ");function z9(s,e,t,{book:n,sweeps:a}){let i=bt(n,s.code),r=Ni(a,t,s);if(i.length+r.length===0)return"";let o=Ue(i),d=_t(o,e.inspection.interval_months),c=Object.entries(Lt).filter(([g])=>o[g]).map(([g,v])=>`${v}: ${Us(g,o[g])}`),h=i.map(({at:g,field:v,value:k})=>[L9(g),Lt[v],Us(v,k)]),f=r.map(({date:g,excess:v,verdict:k})=>[g,Kr(v,S=>S.toFixed(3)),k]),_=(g,v,k)=>k.length>0?fn(`${g} ${s.code}`,v,k):"";return`<p><b>Joint book</b></p>${Dt([...c,...d?[`Next inspection: ${d}`]:[]])}`+_("Every entry of",["Written (UTC)","Of","Entry"],h)+_("Sweeps of",["Day","Excess reflection","Result of the sweep"],f)}function P9(s,e,t,n){let a=(c,h)=>h.length>0?`<p><b>${J(c)}</b></p>${Dt(h)}`:"",{inspection:i,label:r,sealing:o,torque:d}=s;return`<details><summary>${J(s.heading)} <small>${Le(e.code)}</small></summary>`+z9(e,s,t,n)+a("Tools",Vg(s.tools))+a("Steps",s.steps.map(({at:c,text:h})=>Vr+(c?`${c}: ${h}`:h)))+a("Tightening",d.tightened?[d.sentence]:[])+a("Sealing",[o.sentence,...o.layers.map(({text:c})=>Vr+c)])+a("Expect",[`${M(r.frequency_hz)}: loss ${ku(r.expected_loss_db)}, return loss at least ${r.least_return_loss_db.toFixed(0)} dB`])+a("Inspection",[`Inspect every ${i.interval_months} months.`,...Vg(i.checks)])+"</details>"}function I9(s,e){let t=ze(s),n=s.sheets.joints.map((a,i)=>P9(a,t[i],s.name,e));return`<section><h2>Fitting sheets: ${J(s.name)}</h2>${n.join("")}</section>`}function W9({book:s,lines:e}){let t=e.flatMap(a=>{let i=ze(a);return a.sheets.joints.flatMap(({inspection:r,label:o},d)=>{let c=Ue(bt(s,i[d].code)),h=_t(c,r.interval_months),f=c.state?Us("state",c.state):Yr;return h||c.state?[[`${a.name}, ${o.name}`,h||Yr,f]]:[]})});return t.length===0?"":(t.sort(([,a],[,i])=>a<i?-1:1),`<section><h2>Joint book</h2>${fn("When each joint is to be inspected",["Joint","Next inspection","State"],t)}</section>`)}function B9({ports:s,answer:e}){let t=e.adapters.map(({name:a,count:i})=>[`${Vr}${a}`,i]),n=e.pairs.map(({ports:[a,i],joined:r})=>[`${s[a]} to ${s[i]}`,r===null?"can’t be joined":r.adapters.map(({name:o})=>o).join(", ")||"directly"]);return`<section><h2>Kit</h2><p>${J(e.verdict)}</p>`+(t.length>0?fn("Adapters to carry",["Adapter","How many"],t):"")+`${fn("How each pair is joined",["Pair","By"],n)}</section>`}function H9({lines:s,kit:e,ticked:t}){let{pack:n,arrival:a}=Dr(s,e?.answer),i=({id:d,words:c})=>(t.includes(d)?q9:Vr)+c,r=d=>d.map(({heading:c,items:h})=>`<p><b>${J(c)}</b></p>${Dt(h.map(i))}`),o=(d,c)=>c.length>0?`<h3>${d}</h3>${r(c).join("")}`:"";return n.length+a.length===0?"":`<section><h2>Checklist</h2>${o("To pack",n)}${o("On arrival, before power",a)}</section>`}function Yg(s){let{heading:e,words:t,matrix:n,lines:a,kit:i,refused:r,cautions:o}=s;return[C9(s),r.length>0?`<section><h2>Not computed</h2>${Dt(r)}</section>`:"",n?Dg()+Gg({heading:e,words:t,matrix:n}):"",W9(s),...a.map(N9),i?B9(i):"",H9(s),...a.map(d=>I9(d,s)),Kg(o)].join("")}async function U9(s,e){let t=await createImageBitmap(s),n=Math.max(t.width,t.height),a=Math.min(Math.max(n,1800),3600)*e,[i,r]=[t.width,t.height].map(c=>Math.max(1,Math.round(c*a/n))),d=Object.assign(document.createElement("canvas"),{width:i,height:r}).getContext("2d",{willReadFrequently:!0});return d.fillStyle="#fff",d.fillRect(0,0,i,r),d.imageSmoothingQuality="high",d.drawImage(t,0,0,i,r),t.close(),d.getImageData(0,0,i,r)}var F9=[1,.6];async function Jg(s,e){let t=new Set,n=[];for(let a of s)for(let i of F9){let r=await U9(a,i).catch(()=>null);if(!r){n.push(a.name);break}let[o]=await e([r],{effort:40,timeLimit:4e3});for(let d of o)typeof d=="string"&&t.add(d)}return{texts:[...t],unread:n}}var Xg={station:{kept:Cn},lines:{kept:Fe,nothing:{lines:[],current:0}},kit:{kept:Ks},packs:{kept:vt,nothing:{own:[],server:[]}},sweeps:{kept:Nt,nothing:[]},joints:{kept:Ws,nothing:gt},checklist:{kept:mn,nothing:Ft}};var D9=60,ba=Hr(document),Qg=(s,e)=>`${["jointwise",s.toLowerCase().replace(/[^\p{L}\p{N}]+/gu,"-").replace(/^-|-$/g,"")].filter(Boolean).join("-")}.${e}`,Su=class extends w({transport:m(u),file:{type:String},loadCodes:m(u),_name:x(u),_busy:x(u),_read:x(u),_asked:x(u)},me){static styles=[y,T,Ls,b`
      :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--space-3); margin-top: var(--space-3); }
      .panel { display: grid; gap: var(--space-2); justify-items: start; background: none; }
      h2 { margin-bottom: 0; }
      .row { display: flex; flex-wrap: wrap; gap: var(--space-2); }
      .name {
        display: grid; gap: var(--space-1); width: 100%; max-width: 20rem; font-size: var(--type-small);
        font-weight: 600;
      }
    `];constructor(){super(),this.file="",this._busy=!1,this._read="",this._codes=[],this._name=ba?.name??""}render(){return l`<section class="panel">
        <h2>Save my page</h2>
        <p class="quiet">A page as one file, with your station, lines, kit, packs, sweeps and joint book in it. It opens
          with no network, and its tables can be read with scripts off. A station file holds the same and is small; a
          website shows its matrix.</p>
        <label class="name">Name on it<input id="save-name" maxlength=${D9} autocomplete="off"
          .value=${this._called} @input=${({target:e})=>this._name=e.value}></label>
        <div class="row">
          <button id="save-page" class="primary" ?disabled=${this._busy} @click=${this._savePage}>
            ${this._busy?"Calculating…":"Save my page"}</button>
          <button id="save-station" ?disabled=${this._busy} @click=${this._saveStation}>Save as a station file</button>
        </div>
        ${this._carriedNote()}
      </section>
      <section class="panel">
        <h2>Open what was saved</h2>
        <p class="quiet">Its lines, packs, sweeps and entries are added to yours. Nothing of yours is overwritten
          without asking.</p>
        <label class="pick">Open a saved page or station file<input id="open-station" type="file" accept=".json,.html"
          @change=${this._picked}></label>
        <label class="pick">Read pictures of its codes<input id="open-pictures" type="file" accept="image/*" multiple
          @change=${this._pictured}></label>
        <p id="read" role="status">${this._read}</p>
        ${this._asked?this._question():p}
      </section>`}get _called(){return this._name||this.station.name}_carriedNote(){return ba?l`<p id="carried-note">This page carries “${ba.name}” of ${ba.date}. What you change here stays
      with this page in this browser; save the page again to take it along.</p>`:p}_question(){let{asks:e}=this._asked,t=e.join(" and ");return l`<div class="row" role="alert">
      <p>This browser already holds a ${t}. Replace it with the one from the file?</p>
      <button id="replace-own" @click=${()=>this._takeIn(e)}>Replace mine</button>
      <button id="keep-own" @click=${this._done}>Keep mine</button>
    </div>`}_gathered(){return Ur(V(),this._called.trim(),Ae(),ba)}async _savePage(){this._busy=!0;try{let e=this._gathered(),{name:t,date:n}=e,a=this.file?await K9(this.file):document,i={name:t,date:n},r=await Pg(this.transport,V,this.station,this.vocabulary,i),o=[t,"Jointwise"].filter(Boolean).join(" · ");So(Qg(t,"html"),Fg(a,{title:o,tables:Yg(r),carried:e}))}catch(e){this._say(`The page could not be saved: ${e instanceof Error?e.message:e}`)}this._busy=!1}async _saveStation(){let e;try{e=this._gathered()}catch{this._say("This browser keeps nothing for the page, so there is nothing to put into a file.");return}this._busy=!0;let t=await Ig(this.transport,this.station,this.vocabulary).catch(({message:n})=>{this._say(`The file has no matrix for a website in it: ${n}`)});K(Qg(e.name,"json"),"application/json",Sg(e,t)),this._busy=!1}async _picked({target:e}){let[t]=e.files;e.value="",t&&await this._take(async()=>Br(await t.text()))}async _pictured({target:e}){let t=[...e.files];if(e.value="",t.length!==0){this._read="Reading…";try{let{texts:n,unread:a}=await Jg(t,await this.loadCodes());this._codes.push(...n);let i=Rg(this._codes);if(this._read=G9(i,a),i.total===0||i.missing.length>0)return;this._codes=[],await this._take(()=>Ng(i.texts))}catch(n){this._read=n instanceof Error?n.message:String(n)}}}async _take(e){try{this._asked={carried:await e(),asks:[]},this._takeIn([])}catch(t){if(!(t instanceof RangeError))throw t;this._asked=void 0,this._say(`Nothing was changed. ${t.message}`)}}_takeIn(e){let{carried:t}=this._asked,{fields:n}=this.vocabulary.withPacks(kg(t)),{asks:a,problem:i}=jg(Xg,V,n,t,e);if(i)return this._say(i);a.length>0?this._asked={carried:t,asks:a}:this._done()}_done(){this._asked=void 0,$(this,"jw-taken-in",{})}_say(e){$(this,"jw-notice",{text:e})}};function G9({total:s,missing:e,isMixed:t},n){let a=[n.length>0?`No picture: ${Es(n)}.`:"",t?"Some codes are of another station and were left out.":""];return s===0?a.push("No code of a station was found. Hold the sheet flat, in even light, and fill the picture."):e.length===0?a.push(s===1?"The code was read.":`All ${s} codes were read.`):a.push(`${s-e.length} of ${s} codes were read; missing: ${e.join(", ")}. Add a picture of ${e.length===1?"it":"them"}.`),a.filter(Boolean).join(" ")}async function K9(s){let e=await fetch(s);if(!e.ok)throw new Error("the server did not send it.");return new DOMParser().parseFromString(await e.text(),"text/html")}customElements.define("jw-saving",Su);var Jr,V9=s=>`"${s.replace(/["\\]/g,"\\$&").replace(/\s+/g," ")}"`;function Y9(s,e){let t=new Intl.DateTimeFormat("en-GB",{dateStyle:"long"}).format(e),n=[s,t,"Jointwise"].filter(Boolean).join(" · "),a="font: 7pt sans-serif; color: #555; vertical-align: top; padding-top: 1mm;";return`@page {
    @bottom-left { content: ${V9(n)}; ${a} }
    @bottom-right { content: "Sheet " counter(page) " of " counter(pages); ${a} }
  }`}function Zg(s){Jr??=new CSSStyleSheet,Jr.replaceSync(Y9(s,new Date)),document.adoptedStyleSheets.includes(Jr)||document.adoptedStyleSheets.push(Jr)}var eb=b`
  .skip { position: absolute; z-index: 30; top: -100px; left: var(--space-2); }
  .skip:focus { top: var(--space-1); }
  .view { display: block; }
  jw-scenario {
    padding: var(--space-3); overflow: hidden; background: var(--card); border: 1px solid var(--line);
    border-radius: var(--round);
  }
  .bar {
    display: flex; flex-wrap: wrap; gap: var(--space-2) var(--space-4); align-items: end;
    justify-content: space-between;
  }
  .below { display: grid; gap: var(--space-4); }
  /* what stands above the tables speaks to a reader without scripts */
  .tables ::slotted(:is(h1, p)) { display: none; }
  @media (max-width: 720px) { jw-scenario { padding: 0; } }
  @media (min-width: 1280px) { .page:has(> [beside]) > :not(jw-masthead) { margin-right: var(--sheet); } }
  @media print {
    .skip, .own { display: none; }
    .page:has(> [beside]) > * { margin: 0; }
    .page[data-upright] { page: upright; }
    .page[data-upright] > jw-masthead { display: none; }
    main { padding: 0; gap: 2mm; }
    jw-scenario, .bar, .trouble { display: none; }
    .onpaper { display: block; }
    .below { gap: 2mm; break-inside: avoid; }
  }
`;var J9=s=>s instanceof HTMLElement&&s.matches('textarea, input:not([type]), input[type="text"], input[type="url"]');function tb(s){let e;return s.addEventListener("input",t=>e=t.composedPath()[0]),s.addEventListener("jw-change",()=>e=void 0,!0),s.addEventListener("focusout",()=>e=void 0),t=>J9(t.composedPath()[0])&&t.composedPath()[0]===e}var wa=[...ga,un],[sb]=ga,ju=wa.map(({id:s})=>s),X9={station:"Station",saving:"Save or open my page"},_a={text:"",link:"",action:void 0},Eu=class extends w({transport:m(u),shelf:m(u),stage:{type:String},file:{type:String},loadCharts:m(u),loadEmbed:m(u),loadCodes:m(u),_view:x(u),_units:x(u),_notice:x(u),_sheet:x(u)}){static styles=[y,Rn,eb];constructor(){super(),this.stage="",this.file="",this._notice=_a,this._sheet="",this._isTyping=tb(this),this._pressed=e=>this._key(e),this._printed=()=>Zg(this._station.value?.present.name??""),this.version=0,this._vocabulary=new Gt(this,{context:jn}),this._station=new Gt(this,{context:En}),this._view=Ts(location.hash.slice(1),ju),this._fragments=Object.fromEntries(wa.map(e=>[e.id,e===sb?"":`view=${e.id}`])),this._spoken=u,this._units="metric",this._travelled=()=>this._view=Ts(location.hash.slice(1),ju),this._left=({oldURL:e})=>this._keep(new URL(e).hash.slice(1)),Ip(this,()=>wa.find(({id:e})=>e===this._view)?.label??"the page")}connectedCallback(){super.connectedCallback(),window.addEventListener("popstate",this._travelled),window.addEventListener("hashchange",this._left),window.addEventListener("keydown",this._pressed),window.addEventListener("beforeprint",this._printed)}disconnectedCallback(){super.disconnectedCallback(),window.removeEventListener("popstate",this._travelled),window.removeEventListener("hashchange",this._left),window.removeEventListener("keydown",this._pressed),window.removeEventListener("beforeprint",this._printed)}willUpdate(e){this.shelf&&e.has("shelf")&&(this.shelf.listen(()=>{this.version++,this._layPacks(),this.requestUpdate()}),this._layPacks());let t=e.has("_units");t&&fp(this._units),t&&this.shelf&&this._speak(),this.transport&&(t||e.has("transport"))&&(this._spoken=sp(this.transport,this._units))}_layPacks(){this._speak(),this._station.value||this._beginStation(this._vocabulary.value),this._tellPacks()}_speak(){let e=[...wa,np];this._vocabulary.setValue(new di(H,e,this.shelf.inForce,this._units))}_beginStation({fields:e}){let t=new ri(V,e);this._station.setValue(t),t.follow();let n=()=>this._units=t.present.units;n(),this._tellStation(),t.listen(a=>{n(),!a&&(this._tellStation(),this.requestUpdate())})}_tellStation(){let{problem:e,spoilt:t}=this._station.value;if(e===this._told)return;this._told=e;let n=()=>K("jointwise-station-unread.txt","text/plain",t);e&&(this._notice={..._a,text:e,action:t?{words:"Save it",run:n}:void 0})}_tellPacks(){let{problem:e,spoilt:t}=this.shelf,a=t?{words:"Save them",run:()=>K("jointwise-packs-unread.txt","text/plain",t)}:void 0;e&&(this._notice={..._a,text:e,action:a})}render(){let{_notice:e}=this,{_sheet:t,file:n,loadCharts:a,loadEmbed:i,shelf:r,stage:o,version:d}=this,c=this._station.value,h={transport:this._spoken,loadCharts:a,loadEmbed:i,shelf:r,stage:o,version:d},f=wa.find(({id:_})=>_===this._view);return l`<div class="page" data-view=${f.id} ?data-upright=${f.upright}
      @jw-notice=${({detail:_})=>this._notice={..._a,..._}}
      @jw-dismiss=${()=>this._notice=_a}>
      <button class="skip" @click=${this._skip}>Skip to the answer</button>
      <jw-masthead .view=${f.id} .description=${f.description} packs=${r?.inForce.length??0}
        .ways=${()=>this._shown.ways??[]} .resets=${()=>!!this._shown.reset} file=${n}
        ?undo=${c?.canUndo(f.id)} ?redo=${c?.canRedo(f.id)} units=${this._units}
        ?open=${t==="station"} station=${c?.present.name??""}
        @jw-view=${this._turned} @jw-methods=${this._methods} @jw-reset=${()=>this._shown.reset?.()}
        @jw-sheet=${({detail:{name:_}})=>this._sheet=t===_?"":_}
        @jw-turn=${({detail:_})=>this._shown.turn(_.way)}
        @jw-units=${({detail:_})=>c.change(os,{units:_.units})}></jw-masthead>
      ${po(f===un?f.element(h):l`${ah(this.version,po(f.element(h)))}`)}
      <jw-sheet class="own" ?beside=${t!==""} .heading=${t&&X9[t]}
        @jw-close=${this._close}>${this._inSheet()}</jw-sheet>
      <jw-notice .text=${e.text} .link=${e.link} .action=${e.action}></jw-notice>
    </div>`}_inSheet(){return this._sheet==="station"?l`<jw-station-panel></jw-station-panel>`:this._sheet===""?p:l`<jw-saving .transport=${this._spoken} .file=${this.file} .loadCodes=${this.loadCodes}
        @jw-taken-in=${this._readAnew}></jw-saving>
      <jw-on-paper .transport=${this._spoken}></jw-on-paper>`}get _shown(){return N(this.renderRoot,".view")}_skip(){let e=N(this._shown.renderRoot,"main");e.tabIndex=-1,e.focus()}_readAnew(){location.reload()}_close(e){e.stopPropagation(),this._sheet=""}_key(e){let{ctrlKey:t,metaKey:n,shiftKey:a}=e;if(!(t||n)||e.key.toLowerCase()!=="z"||this._isTyping(e))return;e.preventDefault();let i=a?"redo":"undo";this._sheet==="station"?this._station.value.turn(i,os):this._shown.turn(i)}_turned({detail:{view:e}}){if(e===this._view)return;this._keep(location.hash.slice(1));let t=this._fragments[e];history.pushState(Dh,"",t?`#${t}`:location.pathname+location.search),this._view=e}_keep(e){this._fragments[Ts(e,ju)]=e}_methods(){this._view===sb.id?this._shown.openMethods():location.hash="view=methods"}drawAnew(){let e=this.renderRoot.querySelector(".view");e&&ih(e),this.requestUpdate()}offerUpdate(e){this._notice={text:"A newer Jointwise is ready.",link:"",action:{words:"Load it",run:e}}}};customElements.define("jw-app",Eu);function nb(s){let e,t=async()=>{try{return await import(new URL(s,document.baseURI).href),await(await fetch(s)).text()}catch{throw e=void 0,new Error("The script for other websites could not be loaded.")}};return()=>e??=t()}function Ou(s,e,t){let n,a=()=>new Promise((i,r)=>{let o=document.createElement("script");o.src=s,o.onload=()=>i(e()),o.onerror=()=>{n=void 0,o.remove(),r(new Error(`The ${t} could not be loaded.`))},document.head.append(o)});return()=>n??=a()}var Q9=15e3;function ab({http:s,worker:e,answers:t}){let n,a;async function i(){Date.now()-a<Q9||(a=Date.now(),await t()&&(n=void 0))}async function r(...o){let d=n;try{return await e.ask(...o)}catch(c){throw ra(c)?(n=void 0,d):c}}return{async ask(...o){if(n)return i(),r(...o);try{return await s.ask(...o)}catch(d){if(!ra(d))throw d;return n=d,a=Date.now(),r(...o)}}}}function ib(s){return async()=>{try{return(await fetch(new URL("health",s),{cache:"no-store"})).ok}catch{return!1}}}var rb=6e4;function ob(s){return{async ask(e,t,{signal:n}={}){let a=AbortSignal.timeout(rb),i,r;try{i=await fetch(new URL(e,s),{method:"POST",headers:{"Content-Type":"application/json",Accept:"application/json, application/problem+json"},body:JSON.stringify(t),signal:n?AbortSignal.any([n,a]):a}),r=await i.json()}catch{n?.throwIfAborted();let o=a.aborted?`No answer came within ${rb/1e3} seconds; try again.`:"The server cannot be reached; check that it is running, then try again.";throw new tn(o)}if(!i.ok)throw new at(r);return r}}}function lb({plain:s,worker:e,shelf:t}){return{async ask(n,a,{packs:i,...r}={}){if(i)return e.ask(n,a,{...r,packs:i});let o=t.hasOwn||a.search==="thorough"?e:s;try{return await o.ask(n,a,{...r,packs:pu(t.inForce)})}catch(d){let{field:c,message:h}=d,f=t.own.find(({name:_,on:g})=>g&&c?.startsWith(`${_}: `));if(!f)throw d;return t.turn(f,!1,h),this.ask(n,a,r)}}}}async function db(s){let e=await fetch(new URL("packs.json",s),{cache:"no-store"});if(!e.ok)throw new Error(`packs.json: ${e.status}`);return(await e.json()).map(({text:t})=>t)}var Xr=s=>s,cb=globalThis.trustedTypes?.createPolicy("jointwise-script",{createScript:Xr,createScriptURL:Xr})??{createScript:Xr,createScriptURL:Xr};function ub(s){let e=URL.createObjectURL(new Blob([s],{type:"text/javascript"}));try{return new Worker(cb.createScriptURL(e))}finally{URL.revokeObjectURL(e)}}async function Z9(s){let e=new DecompressionStream("gzip"),t=e.writable.getWriter(),n=t.write(s).then(()=>t.close()),[a]=await Promise.all([new Response(e.readable).arrayBuffer(),n]);return new Uint8Array(a)}async function hb({bytes:s,sha256:e},t){if(Za(Cs(s))!==e)throw new Error(`part ${t} is not the one this page was built with`);return Z9(s)}var Qr=class{#e;#t;#s=!1;constructor({payload:e,createWorker:t=ub,hear:n}){this.#e=n,this.#a(e,t).catch(a=>this.#i(hh(String(a))))}send(e){this.#t?.postMessage(e)}end(){this.#s=!0,this.#t?.terminate()}async#a(e,t){let{worker:n,...a}=await e.read(),i=this.#n(n,t,Object.keys(a)),r=async([o,d])=>{let[c]=await Promise.all([d,i]);this.#s||this.send(ch(o,c))};await Promise.all([i,...Object.entries(a).map(r)])}async#n(e,t,n){let a=new TextDecoder().decode(await hb(await e,"worker"));if(this.#s)return;let i=o=>this.#i(ph(o.message??"the worker could not be started")),r=t(a);r.onmessage=({data:o})=>this.#i(o),r.onerror=i,r.onmessageerror=i,this.#t=r,this.send(dh(n))}#i(e){this.#s||this.#e(e)}};var pb=12e4,e6=2e4,t6=3e3,s6=1e3,n6=2,a6="The calculation cannot start in this browser; only the built-in tables can be shown.",i6="The calculation failed on this request; change it, or try again.",r6=s=>`No answer came within ${s} seconds; try again.`;function mb({payload:s,longestS:e,createWorker:t,onProgress:n=()=>{}}){let a=new Tu(i=>new Qr({payload:s,createWorker:t,hear:i}),e,n);return{start:()=>a.start(),ask:(i,r,o={})=>a.ask(i,r,o)}}var Tu=class{#e;#t;#s;#a=0;#n=[];#i;#r;#o=!1;#u;constructor(e,t,n){this.#e=e,this.#t=t,this.#s=n}ask(e,t,{signal:n,packs:a}){return new Promise((i,r)=>{n?.throwIfAborted();let o=new TextEncoder().encode(JSON.stringify(t)),d={number:++this.#a,operation:e,body:o,packs:a,tries:0,unwanted:!1,resolve:i,reject:r};n?.addEventListener("abort",()=>this.#g(d,n.reason),{once:!0}),this.#n.push(d),this.#l()})}start(){this.#r===void 0&&(this.#r=this.#e(e=>this.#d[e.kind](e)),this.#c(pb,()=>this.#d.died()))}#l(){if(this.#n.length===0||(this.start(),!this.#o||this.#i))return;let e=this.#n.shift();this.#i=e,e.tries++,this.#r?.send(uh(e.number,e.operation,e.body,e.packs)),this.#c(e6,()=>this.#d.died())}#d={stage:({name:e})=>{this.#s(e),this.#o=e===St,this.#o?this.#p():this.#c(pb,()=>this.#d.died()),this.#l()},unable:({reason:e})=>{console.info(e),this.#s(""),this.#h();for(let t of this.#n.splice(0))t.reject(new tn(a6))},taken:()=>this.#m(),answer:({number:e,body:t})=>this.#f(e,n=>n.resolve(JSON.parse(new TextDecoder().decode(t)))),refused:({number:e,refusal:t})=>this.#f(e,n=>n.reject(new at(t))),died:({reason:e}={})=>{if(!this.#o)return this.#d.unable({reason:e??"the worker fell silent while starting"});let t=this.#i;this.#h(),t&&!t.unwanted&&(t.tries<n6?this.#n.unshift(t):t.reject(new at({detail:i6}))),this.#l()}};#m(){let e=this.#i,t=this.#t[e.operation];this.#c(e.unwanted?t6:t*1e3,()=>{this.#h(),e.reject(new at({detail:r6(t)})),this.#l()})}#f(e,t){let n=this.#i;n?.number===e&&(this.#p(),this.#i=void 0,t(n),this.#l())}#g(e,t){e.reject(t),e.unwanted=!0,e===this.#i?this.#m():this.#n=this.#n.filter(n=>n!==e)}#h(){this.#p(),this.#r?.end(),this.#r=void 0,this.#i=void 0,this.#o=!1}#c(e,t){clearTimeout(this.#u);let n=Math.min(e,s6);this.#u=setTimeout(e>n?()=>this.#c(e-n,t):t,n)}#p(){clearTimeout(this.#u)}};var fb="build",Zr=()=>document.querySelector(`meta[name=${fb}]`)?.getAttribute("content")??"",xs=s=>`${s}?${fb}=${Zr()}`;function gb(s){let e=async t=>{let n=await fetch(new URL(xs(t),s));if(!n.ok)throw new Error(`${t} cannot be fetched: ${n.status}`);return n};return{async read(){let{parts:t}=await(await e("payload.json")).json(),n=async({file:a,sha256:i})=>({bytes:new Uint8Array(await(await e(a)).arrayBuffer()),sha256:i});return Object.fromEntries(t.map(a=>[a.name,n(a)]))}}}async function bb(s,e){let{serviceWorker:t}=navigator;if(!t)return;t.addEventListener("message",({data:r,ports:o})=>{r.kind===bh&&o[0].postMessage(Zr()),r.kind===gh&&r.build!==Zr()&&e(()=>location.reload())}),t.startMessages(),t.controller?.postMessage(fh());let n=await t.register(s),a=()=>{if(!n.waiting)return location.reload();t.addEventListener("controllerchange",()=>location.reload(),{once:!0}),n.waiting.postMessage(mh())},i=()=>n.waiting&&t.controller&&e(a);n.addEventListener("updatefound",()=>n.installing?.addEventListener("statechange",i)),i()}var Ve=document.querySelector("jw-app"),Au=new URL("api/v1/",document.baseURI),_b=mb({payload:gb(new URL("payload/",document.baseURI)),longestS:Cu,onProgress:s=>Ve.stage=s}),o6=ab({http:ob(Au),worker:_b,answers:ib(Au)});Ve.shelf=new Pr(V);Ve.shelf.follow();Ve.transport=lb({plain:o6,worker:_b,shelf:Ve.shelf});db(Au).then(s=>Ve.shelf.takeServer(s),s=>console.info(String(s)));Ve.loadCharts=Ou(xs("charts.js"),()=>window.Plotly,"chart library");Ve.loadCodes=Ou(xs("codes.js"),()=>window.readCodes,"reader of codes");Ve.loadEmbed=nb(xs("embed.js"));Ve.file=xs("jointwise.html");bb("service-worker.js",s=>Ve.offerUpdate(s)).catch(s=>console.info(String(s)));
